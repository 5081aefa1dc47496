using System.Security.Cryptography;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>SHA-256 (FIPS 180-4) as files hold it.</summary>
internal static class Sha256Text
{
    /// <summary>Lower-case hexadecimal, 64 characters.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}

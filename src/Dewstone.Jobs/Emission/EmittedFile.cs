using Dewstone.Jobs.Emission.Json;

namespace Dewstone.Jobs.Emission;

/// <summary>One file of a job folder, ready to be written.</summary>
/// <param name="RelativePath">Path inside the job folder, with <c>/</c> between its parts.</param>
/// <param name="Bytes">Its whole content.</param>
public sealed record EmittedFile(string RelativePath, ReadOnlyMemory<byte> Bytes)
{
    private string? sha256;

    /// <summary>SHA-256 of its content, lower-case hexadecimal; worked out when first asked for.</summary>
    public string Sha256 => sha256 ??= Sha256Text.Of(Bytes.Span);
}

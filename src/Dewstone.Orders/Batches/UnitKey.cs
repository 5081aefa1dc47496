using System.Reflection;
using System.Security.Cryptography;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;

namespace Dewstone.Orders.Batches;

/// <summary>
/// The name of a solved unit in the store: a hash of all that its doses, solid, figures and findings follow from, and of the code that computes
/// them. Names of unit and mix, files and lines are left out, since they are this run's.
/// </summary>
internal static class UnitKey
{
    private static readonly string[] Modules =
    [
        .. ((Assembly[])[typeof(ReefUnit).Assembly, typeof(SplitMix64).Assembly, typeof(UnitSolver).Assembly]).Select(part => part.ManifestModule.ModuleVersionId.ToString("N")),
    ];

    /// <summary>The key of a question.</summary>
    /// <returns>SHA-256, lower-case hexadecimal.</returns>
    public static string Of(UnitQuestion question)
    {
        JobDescription job = question.Job;
        JobDescription bare = job with
        {
            Unit = job.Unit with { Name = "", Place = question.Wish },
            Mix = job.Mix with { Name = "" },
            Printer = IdealHead.Of(job.Printer),
            Needles = null,
        };
        return Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Compact(json =>
        {
            json.WriteNumber("format", StoredUnitBytes.Version);
            json.Strings("modules", Modules);
            json.WriteNumber("cells", question.Cells);
            json.WriteBoolean("covered", question.Covered);
            json.Object("description", () => JobCoreEmitter.Write(json, bare));
        })));
    }
}

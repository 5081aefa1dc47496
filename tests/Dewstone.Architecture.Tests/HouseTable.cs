namespace Dewstone.Architecture.Tests;

/// <summary>Who may use whom: the dependency tables of DEVELOPERS.md in the form the tests hold the code against.</summary>
internal static class HouseTable
{
    /// <summary>Project of <c>src/</c> to the projects it may name.</summary>
    public static IReadOnlyDictionary<string, string[]> Projects { get; } = new Dictionary<string, string[]>
    {
        ["Dewstone.Model"] = [],
        ["Dewstone.Reading"] = ["Dewstone.Model"],
        ["Dewstone.Compute"] = ["Dewstone.Model"],
        ["Dewstone.Jobs"] = ["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute"],
        ["Dewstone.Cli"] = ["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute", "Dewstone.Jobs"],
    };

    /// <summary>Project of <c>src/</c> to the libraries it may name; a library is known to one room only.</summary>
    public static IReadOnlyDictionary<string, string[]> Packages { get; } = new Dictionary<string, string[]>
    {
        ["Dewstone.Model"] = [],
        ["Dewstone.Reading"] = ["Sep", "YamlDotNet"],
        ["Dewstone.Compute"] = ["MathNet.Numerics"],
        ["Dewstone.Jobs"] = ["JsonSchema.Net", "OxyPlot.Core", "SharpGLTF.Core", "SixLabors.ImageSharp"],
        ["Dewstone.Cli"] = ["Spectre.Console", "System.CommandLine"],
    };

    /// <summary>Folder of <c>Dewstone.Compute</c> to the folders it may use.</summary>
    public static IReadOnlyDictionary<string, string[]> Compute { get; } = new Dictionary<string, string[]>
    {
        ["Numerics"] = [],
        ["Geometry"] = ["Numerics"],
        ["Sequencing"] = ["Numerics"],
        ["Wetting"] = ["Numerics", "Sequencing"],
        ["Dosing"] = ["Numerics", "Geometry", "Sequencing", "Wetting"],
        ["Inspection"] = ["Numerics", "Geometry"],
        ["Strength"] = ["Numerics", "Estimation"],
        ["Seabed"] = ["Numerics", "Geometry"],
        ["Habitat"] = ["Numerics", "Geometry"],
        ["Estimation"] = ["Numerics", "Sequencing"],
        ["Calibration"] = ["Numerics", "Wetting"],
        ["Survey"] = ["Numerics", "Sequencing", "Wetting"],
        ["Studies"] =
        [
            "Numerics", "Geometry", "Sequencing", "Wetting", "Dosing", "Inspection", "Strength", "Seabed", "Habitat", "Estimation",
            "Calibration", "Survey",
        ],
    };

    /// <summary>Folder of <c>Dewstone.Jobs</c> to the folders it may use.</summary>
    public static IReadOnlyDictionary<string, string[]> Jobs { get; } = new Dictionary<string, string[]>
    {
        ["Emission"] = [],
        ["Compilation"] = ["Emission"],
        ["Folders"] = ["Emission"],
        ["Comparison"] = ["Emission", "Folders"],
        ["Verification"] = ["Emission", "Compilation", "Folders"],
        ["Resuming"] = ["Emission", "Compilation", "Folders"],
        ["Surveys"] = ["Emission", "Compilation", "Folders"],
    };
}

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
        ["Dewstone.Orders"] = ["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute", "Dewstone.Jobs"],
        ["Dewstone.Cli"] = ["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute", "Dewstone.Jobs", "Dewstone.Orders"],
    };

    /// <summary>Project of <c>src/</c> to the libraries it may name; a library is known to one room only.</summary>
    public static IReadOnlyDictionary<string, string[]> Packages { get; } = new Dictionary<string, string[]>
    {
        ["Dewstone.Model"] = [],
        ["Dewstone.Reading"] = ["Sep", "YamlDotNet"],
        ["Dewstone.Compute"] = ["MathNet.Numerics"],
        ["Dewstone.Jobs"] = ["JsonSchema.Net", "OxyPlot.Core", "SixLabors.ImageSharp"],
        ["Dewstone.Orders"] = ["Google.OrTools", "Google.Protobuf", "Ical.Net"],
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
        ["Bins"] = ["Emission", "Compilation"],
        ["Resuming"] = ["Emission", "Compilation", "Folders"],
        ["Surveys"] = ["Emission", "Compilation", "Folders"],
    };

    /// <summary>Folder of <c>Dewstone.Orders</c> to the folders it may use.</summary>
    public static IReadOnlyDictionary<string, string[]> Orders { get; } = new Dictionary<string, string[]>
    {
        ["Listing"] = [],
        ["Packing"] = ["Listing"],
        ["Scheduling"] = ["Listing"],
        ["Plans"] = ["Listing", "Packing", "Scheduling"],
        ["Batches"] = ["Listing", "Plans"],
        ["SitePlans"] = ["Listing", "Plans", "Batches"],
        ["Gathering"] = ["Listing", "Plans", "Batches", "SitePlans"],
    };
}

using System.Runtime.CompilerServices;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class DemoDataTests
{
    // The stored files are those the generator makes; a difference leaves fresh ones to copy.
    [Fact]
    public void Stored_measurements_are_those_of_the_generator()
    {
        string stored = Folder();
        string? fresh = null;
        foreach ((string name, string text) in DemoData.Files())
        {
            string path = Path.Combine(stored, name);
            if (!File.Exists(path) || File.ReadAllText(path) != text)
            {
                fresh ??= Directory.CreateTempSubdirectory("dewstone-demo-").FullName;
                string made = Path.Combine(fresh, name);
                Directory.CreateDirectory(Path.GetDirectoryName(made)!);
                File.WriteAllText(made, text);
            }
        }

        Assert.True(fresh is null, $"copy the files in {fresh} into {stored}");
    }

    private static string Folder([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../examples/wrackline-bay/calibration"));
}

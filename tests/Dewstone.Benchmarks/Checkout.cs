namespace Dewstone.Benchmarks;

/// <summary>Where things lie in the checkout that this program was built from.</summary>
internal static class Checkout
{
    /// <summary>The folder of <c>build.sh</c>.</summary>
    public static string Root { get; } = Find();

    /// <summary>Folder of all outputs.</summary>
    public static string Artifacts => Path.Combine(Root, ".artifacts");

    /// <summary>The program that <c>./build.sh build</c> leaves.</summary>
    public static string Program => Path.Combine(Artifacts, "dewstone", "dewstone");

    /// <summary>A bare .NET program, built beside this one.</summary>
    public static string Bare => Path.Combine(Artifacts, "bin", "Dewstone.Bare", "release", "Dewstone.Bare");

    /// <summary>Description of an example's unit.</summary>
    /// <param name="name">Its file without endings.</param>
    /// <returns>Full path.</returns>
    public static string Unit(string name) => Path.Combine(Root, "examples", "wrackline-bay", "units", name + ".unit.yaml");

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "build.sh")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Run from a checkout of the repository.");
    }
}

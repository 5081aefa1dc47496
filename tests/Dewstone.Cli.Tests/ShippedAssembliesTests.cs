using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.Json;

namespace Dewstone.Cli.Tests;

/// <summary>
/// What the assemblies that ship could do beyond computing and writing files, read from the metadata of each: what a library cannot name, it cannot call.
/// Reflection and native code are not seen by this; the run without a network is for those.
/// </summary>
public sealed class ShippedAssembliesTests
{
    // Whole families that reach out of the process: the network, other programs, code that was not built with ours.
    private static readonly string[] Reaching =
    [
        "System.Net.", "System.Diagnostics.Process.", "System.Diagnostics.ProcessStartInfo.", "System.Runtime.Loader.", "System.Reflection.Emit.",
        "System.Reflection.Assembly.Load", "System.Reflection.Assembly.UnsafeLoad", "System.Runtime.InteropServices.NativeLibrary.",
        "System.Runtime.Serialization.Formatters.", "Microsoft.CSharp.", "Microsoft.CodeAnalysis.", "System.IO.Pipes.",
    ];

    // What libraries name of them, and why none of it is reached from here.
    private static readonly string[] LookedAt =
    [
        "JsonSchema.Net: System.Net.Sockets.AddressFamily.", // an enumeration: which kind of address a text is
        "MathNet.Numerics: System.Reflection.Assembly.Load", // faster algebra, of packages that we do not ship
        "Spectre.Console: System.Net.Dns.", // this machine's own name, for links to files, which we do not print
        "Spectre.Console: System.Net.Dns.GetHostName",
    ];

    // Text and numbers from the same families.
    private static readonly string[] Harmless = ["System.Net.WebUtility.", "System.Net.IPAddress."];

    [Fact]
    public void Rooms_name_nothing_that_reaches_out_but_whether_a_process_still_runs()
    {
        foreach (string room in Shipped().Where(IsOurs))
        {
            Assert.Equal(
                room is "Dewstone.Jobs" or "Dewstone.Orders"
                    ? ["System.Diagnostics.Process.GetProcessById"] : [],
                Named(room));
        }
    }

    [Fact]
    public void Rooms_call_no_native_code_of_their_own() => Assert.All(Shipped().Where(IsOurs), room => Assert.Equal(0, Read(room, reader => reader.GetTableRowCount(TableIndex.ImplMap))));

    [Fact]
    public void Libraries_name_only_what_was_looked_at()
    {
        Dictionary<string, string[]> found = Shipped().Where(name => !IsOurs(name)).ToDictionary(name => name, Named);
        Assert.True(found.Count > 15, $"only {found.Count} libraries are listed");
        Assert.Equal(
            LookedAt,
            found.Where(library => library.Value.Length > 0).SelectMany(library => library.Value.Select(member => $"{library.Key}: {member}")).Order(StringComparer.Ordinal));
    }

    private static bool IsOurs(string name) => name == "dewstone" || name.StartsWith("Dewstone.", StringComparison.Ordinal);

    /// <summary>Names of the assemblies in the program's own list of what it needs.</summary>
    private static IReadOnlyList<string> Shipped()
    {
        using JsonDocument list = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "dewstone.deps.json")));
        return [.. list.RootElement.GetProperty("targets").EnumerateObject().Single().Value.EnumerateObject()
            .Where(library => library.Value.TryGetProperty("runtime", out _))
            .SelectMany(library => library.Value.GetProperty("runtime").EnumerateObject())
            .Select(file => Path.GetFileNameWithoutExtension(file.Name)).Order(StringComparer.Ordinal)];
    }

    private static string[] Named(string assembly) => Read(assembly, reader => reader.MemberReferences
        .Select(handle => reader.GetMemberReference(handle))
        .Where(member => member.Parent.Kind == HandleKind.TypeReference)
        .Select(member => $"{FullName(reader, (TypeReferenceHandle)member.Parent)}.{reader.GetString(member.Name)}")
        .Concat(reader.TypeReferences.Select(handle => $"{FullName(reader, handle)}.").Where(type => type.StartsWith("System.Net.", StringComparison.Ordinal)))
        .Where(name => Array.Exists(Reaching, reach => name.StartsWith(reach, StringComparison.Ordinal)) && !Array.Exists(Harmless, harmless => name.StartsWith(harmless, StringComparison.Ordinal)))
        .Distinct().Order(StringComparer.Ordinal).ToArray());

    private static string FullName(MetadataReader reader, TypeReferenceHandle handle)
    {
        TypeReference type = reader.GetTypeReference(handle);
        string name = reader.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference ? $"{FullName(reader, (TypeReferenceHandle)type.ResolutionScope)}.{name}" : $"{reader.GetString(type.Namespace)}.{name}";
    }

    private static T Read<T>(string assembly, Func<MetadataReader, T> ask)
    {
        using PEReader file = new(File.OpenRead(Path.Combine(AppContext.BaseDirectory, assembly + ".dll")));
        return ask(file.GetMetadataReader());
    }
}

using Dewstone.Jobs.Emission;

namespace Dewstone.Jobs.Folders;

/// <summary>A job folder to write.</summary>
public sealed record JobFolderOrder
{
    /// <summary>Folder it is written into; made when missing.</summary>
    public required string OutputFolder { get; init; }

    /// <summary>Name of the job, without <c>.job</c>; see <see cref="JobFolder.NameOf"/>.</summary>
    public required string Name { get; init; }

    /// <summary>Whether the job is held back from printing.</summary>
    public required bool Held { get; init; }

    /// <summary>Every file, the manifest among them; gone through once, and written as it comes.</summary>
    public required IEnumerable<EmittedFile> Files { get; init; }
}

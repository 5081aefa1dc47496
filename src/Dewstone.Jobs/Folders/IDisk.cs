namespace Dewstone.Jobs.Folders;

/// <summary>The few things a job folder is written with. A seam for the tests, which make each of them fail in turn.</summary>
internal interface IDisk
{
    /// <summary>Whether a folder stands there, links followed.</summary>
    bool FolderExists(string path);

    /// <summary>Whether anything that is no folder stands there, a dangling link included.</summary>
    bool OtherExists(string path);

    /// <summary>Whether a link stands there.</summary>
    bool IsLink(string path);

    /// <summary>Names of the folders in a folder, links left out, in ordinal order.</summary>
    IReadOnlyList<string> FolderNames(string path);

    /// <summary>Latest change of a folder or of what lies directly in it.</summary>
    DateTime LatestChange(string path);

    /// <summary>Whether a folder and those below it hold nothing but folders.</summary>
    bool HoldsNoFile(string path);

    /// <summary>Content of a file; null when there is none that can be read.</summary>
    byte[]? TryRead(string path);

    /// <summary>Makes a folder and those above it.</summary>
    void CreateFolder(string path);

    /// <summary>Writes a new file; it may still be on its way to the disk.</summary>
    void WriteFile(string path, ReadOnlyMemory<byte> bytes);

    /// <summary>Sees a written file through to the disk.</summary>
    void Settle(string path);

    /// <summary>Renames a folder; nothing may stand at the new name.</summary>
    void Rename(string from, string to);

    /// <summary>Removes a folder and all that is in it.</summary>
    void Delete(string path);
}

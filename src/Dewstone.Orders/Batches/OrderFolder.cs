using Dewstone.Jobs.Folders;

namespace Dewstone.Orders.Batches;

/// <summary>Where things stand in the folder of an order.</summary>
/// <param name="Root">The folder itself.</param>
public sealed record OrderFolder(string Root)
{
    private const string FileEnding = ".order";

    /// <summary>What the folder was begun with.</summary>
    public string Pin => Path.Combine(Root, "order.json");

    /// <summary>The plan.</summary>
    public string Plan => Path.Combine(Root, "plan.json");

    /// <summary>Solved units.</summary>
    public string Store => Path.Combine(Root, "store");

    /// <summary>Reports of tasks.</summary>
    public string Tasks => Path.Combine(Root, "tasks");

    /// <summary>Records of units.</summary>
    public string Units => Path.Combine(Root, "units");

    /// <summary>Bin jobs and their records.</summary>
    public string Bins => Path.Combine(Root, "bins");

    /// <summary>The folder of an order.</summary>
    /// <param name="outputFolder">Folder named by <c>-o</c>.</param>
    /// <param name="orderFile">The order's file.</param>
    /// <returns>Its folder there, named like the file without <c>.order.yaml</c>.</returns>
    public static OrderFolder Of(string outputFolder, string orderFile)
    {
        string name = JobFolder.NameOf(orderFile);
        return new(Path.Combine(outputFolder, name.EndsWith(FileEnding, StringComparison.OrdinalIgnoreCase) ? name[..^FileEnding.Length] : name));
    }

    /// <summary>Report of a task.</summary>
    /// <param name="task">Task, from 0.</param>
    /// <param name="tasks">Number of tasks.</param>
    /// <returns>Path of the file.</returns>
    public string Task(int task, int tasks) => Path.Combine(Tasks, string.Create(null, $"task-{task}-of-{tasks}.json"));

    /// <summary>Record of a unit.</summary>
    /// <param name="mark">Its mark.</param>
    /// <returns>Path of the file.</returns>
    public string Unit(string mark) => Path.Combine(Units, mark + ".json");

    /// <summary>Record of a bin.</summary>
    /// <param name="bin">Name of the bin.</param>
    /// <returns>Path of the file.</returns>
    public string Bin(string bin) => Path.Combine(Bins, bin + ".json");

    /// <summary>An entry of the store.</summary>
    /// <param name="key">SHA-256 of what it was solved from, lower-case hexadecimal.</param>
    /// <returns>Path of the file, one of 256 folders.</returns>
    public string Entry(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return Path.Combine(Store, key[..2], key + ".unit");
    }
}

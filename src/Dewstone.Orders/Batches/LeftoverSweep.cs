namespace Dewstone.Orders.Batches;

/// <summary>Removes what killed programs left in the folder of an order: hidden files that no name points to.</summary>
internal static class LeftoverSweep
{
    private static readonly TimeSpan StaleAge = TimeSpan.FromDays(1);

    /// <summary>
    /// Removes temporaries of programs of this machine that run no more, and those of other machines that nobody touched for a day. Their age is
    /// taken against the last change of their folder, so that no clock of ours is asked and a store with a clock of its own is no danger.
    /// </summary>
    /// <param name="folder">The order's folder.</param>
    public static void Sweep(OrderFolder folder)
    {
        IEnumerable<string> stores = Directory.Exists(folder.Store) ? Directory.EnumerateDirectories(folder.Store) : [];
        foreach (string place in (string[])[folder.Root, folder.Units, folder.Tasks, folder.Bins, .. stores])
        {
            SweepOne(place);
        }
    }

    private static void SweepOne(string folder)
    {
        try
        {
            if (!Directory.Exists(folder))
            {
                return;
            }

            FileInfo[] hidden = [.. new DirectoryInfo(folder).EnumerateFiles(".*", new EnumerationOptions { AttributesToSkip = FileAttributes.None }).Where(file => TemporaryName.Is(file.Name))];
            DateTime newest = hidden.Length == 0 ? default : Directory.GetLastWriteTimeUtc(folder);
            foreach (FileInfo file in hidden.Where(file => TemporaryName.IsOrphan(file.Name) || newest - file.LastWriteTimeUtc > StaleAge))
            {
                file.Delete();
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Sweeping is a courtesy: what cannot be removed now is met again by the next run.
        }
    }
}

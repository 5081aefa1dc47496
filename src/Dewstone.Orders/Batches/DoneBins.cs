using System.Security.Cryptography;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Orders.Plans;
using Dewstone.Reading.Job;

namespace Dewstone.Orders.Batches;

/// <summary>Tells what of an order is done, from the files alone.</summary>
/// <param name="folder">The order's folder.</param>
internal sealed class DoneBins(OrderFolder folder)
{
    /// <summary>The records of a bin that is done: made from just this, its job folder and its units' records whole.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="key">Hash of what it is made from now.</param>
    /// <returns>Its record and those of its units; null when it must be made.</returns>
    /// <exception cref="IOException">A file stands but cannot be read.</exception>
    public (BinRecord Bin, IReadOnlyList<UnitRecord> Units)? Find(PlannedBin bin, string key)
    {
        if (Record(bin.Name) is not { } record || record.Key != key || !JobIsWhole(record))
        {
            return null;
        }

        UnitRecord?[] units = [.. bin.Units.Select(unit => Unit(unit.Mark))];
        return units.Any(unit => unit is null || unit.Bin != bin.Name) ? null : (record, [.. units.Select(unit => unit!)]);
    }

    /// <summary>A bin's record; null when it has none that can be read.</summary>
    public BinRecord? Record(string bin) => RecordJson.ReadBin(SharedFile.TryRead(folder.Bin(bin)));

    /// <summary>A unit's record; null when it has none that can be read.</summary>
    public UnitRecord? Unit(string mark) => RecordJson.ReadUnit(SharedFile.TryRead(folder.Unit(mark)));

    /// <summary>Whether the job folder a record names holds all its files, each as it was written.</summary>
    /// <param name="record">The record.</param>
    /// <returns>True also when the record says that there is no job.</returns>
    public bool JobIsWhole(BinRecord record)
    {
        if (record.Folder.Length == 0)
        {
            return true;
        }

        string job = Path.Combine(folder.Bins, Path.GetFileName(record.Folder));
        JobFolderRecovery.PutBack(job);
        byte[]? manifest = SharedFile.TryRead(Path.Combine(job, ManifestEmitter.Path));
        return manifest is not null && Hash(manifest) == record.ManifestSha256 && ManifestReader.TryRead(manifest, out Manifest? read, out _)
            && read!.Files.All(file => SharedFile.TryRead(Path.Combine(job, file.Path)) is { } bytes && Hash(bytes) == file.Sha256);
    }

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}

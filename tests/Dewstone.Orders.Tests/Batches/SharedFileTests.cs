using System.Text;
using Dewstone.Orders.Batches;

namespace Dewstone.Orders.Tests.Batches;

public sealed class SharedFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Of_many_writers_one_stays_whole_and_nothing_is_left_beside_it()
    {
        string path = Path.Combine(folder, "store", "ab", "entry.unit");
        byte[][] copies = [.. Enumerable.Range(0, 16).Select(writer => Encoding.UTF8.GetBytes(new string((char)('a' + writer), 100_000)))];

        Parallel.For(0, copies.Length, writer => SharedFile.WriteOnce(path, copies[writer]));

        byte[] standing = File.ReadAllBytes(path);
        Assert.Contains(copies, copy => copy.SequenceEqual(standing));
        Assert.Equal([path], Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(path)!));
    }

    [Fact]
    public void The_second_writer_drops_its_copy_and_a_replacement_does_not()
    {
        string path = Path.Combine(folder, "plan.json");
        SharedFile.WriteOnce(path, "first"u8);
        SharedFile.WriteOnce(path, "second"u8);
        Assert.Equal("first", File.ReadAllText(path));
        SharedFile.Write(path, "third"u8);
        Assert.Equal("third", File.ReadAllText(path));
    }

    [Fact]
    public void A_file_with_the_same_content_is_not_touched()
    {
        string path = Path.Combine(folder, "a.json");
        SharedFile.Write(path, "same"u8);
        File.SetLastWriteTimeUtc(path, new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        SharedFile.Write(path, "same"u8);
        Assert.Equal(2020, File.GetLastWriteTimeUtc(path).Year);
    }

    [Fact]
    public void A_fault_of_the_disk_leaves_nothing_behind()
    {
        Directory.CreateDirectory(Path.Combine(folder, "taken"));
        Assert.ThrowsAny<Exception>(() => SharedFile.Write(Path.Combine(folder, "taken"), "x"u8));
        Assert.Equal(["taken"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_that_does_not_stand_reads_as_none()
    {
        Assert.Null(SharedFile.TryRead(Path.Combine(folder, "none")));
        Assert.Null(SharedFile.TryRead(Path.Combine(folder, "no", "folder")));
    }

    [Fact]
    public void Names_of_temporaries_differ_and_tell_who_made_them()
    {
        string[] names = [.. Enumerable.Range(0, 100).Select(_ => TemporaryName.New("a.json"))];
        Assert.Equal(100, names.Distinct(StringComparer.Ordinal).Count());
        Assert.All(names, name => Assert.True(TemporaryName.Is(name)));
        Assert.False(TemporaryName.Is("a.json"));
        Assert.False(TemporaryName.Is(".hidden"));
        // This process runs; one with a number beyond what Linux gives out does not, and neither does one that began at another time.
        Assert.All(names, name => Assert.False(TemporaryName.IsOrphan(name)));
        string[] parts = names[0].Split('-');
        Assert.True(TemporaryName.IsOrphan($"{parts[0]}-{parts[1]}-7ffffff0-{parts[3]}-{parts[4]}"));
        Assert.True(TemporaryName.IsOrphan($"{parts[0]}-{parts[1]}-{parts[2]}-ffffffffff-{parts[4]}"));
        Assert.False(TemporaryName.IsOrphan($"{parts[0]}-00000000-7ffffff0-{parts[3]}-{parts[4]}"));
    }

    [Fact]
    public void The_sweep_takes_what_the_dead_left_and_what_is_a_day_old_and_leaves_the_rest()
    {
        OrderFolder order = new(folder);
        string entries = Path.GetDirectoryName(order.Entry("ab" + new string('0', 62)))!;
        Directory.CreateDirectory(entries);
        string alive = TemporaryName.New("a.unit");
        string[] parts = alive.Split('-');
        string dead = $"{parts[0]}-{parts[1]}-7ffffff0-{parts[3]}-{parts[4]}", elsewhere = $"{parts[0]}-00000000-{parts[2]}-{parts[3]}-{parts[4]}";
        string old = $".b.unit.tmp-00000000-{parts[2]}-{parts[3]}-{parts[4]}";
        foreach (string name in (string[])[alive, dead, elsewhere, old, "c.unit", ".other"])
        {
            File.WriteAllText(Path.Combine(entries, name), "x");
        }

        File.SetLastWriteTimeUtc(Path.Combine(entries, old), File.GetLastWriteTimeUtc(Path.Combine(entries, alive)).AddDays(-2));
        LeftoverSweep.Sweep(order);
        Assert.Equal(new[] { alive, elsewhere, "c.unit", ".other" }.Order(StringComparer.Ordinal), Directory.EnumerateFiles(entries).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));
    }
}

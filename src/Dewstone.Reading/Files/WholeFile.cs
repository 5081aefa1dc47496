using System.Security.Cryptography;

namespace Dewstone.Reading.Files;

/// <summary>
/// Reads whole files without trusting what stands under a name: a file that is replaced by a pipe or a device (or by a link to one) neither holds the program
/// up nor fills its memory.
/// </summary>
public static class WholeFile
{
    // What says it is empty and is not, is a pipe, a device or a file of the system: little is read from it.
    private const long MostOfEmpty = 4L * 1024 * 1024;
    private const int FirstBytes = 4096;

    // Longer than a program that writes into a pipe takes to begin.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="most">Greatest size, bytes.</param>
    /// <returns>Its bytes; null when there are more.</returns>
    /// <exception cref="IOException">It cannot be read, or is a pipe that gives nothing.</exception>
    /// <exception cref="UnauthorizedAccessException">Its rights forbid it.</exception>
    public static byte[]? TryRead(string path, long most)
    {
        long length = Length(path);
        if (length > 0)
        {
            return length > most ? null : Bytes(path, most);
        }

        Task<byte[]?> reading = Task.Factory.StartNew(
            () => Bytes(path, Math.Min(most, MostOfEmpty)), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        return ((IAsyncResult)reading).AsyncWaitHandle.WaitOne(Patience)
            ? reading.GetAwaiter().GetResult()
            : throw new IOException("it is a pipe or a device, and nothing comes out of it");
    }

    /// <summary>Reads a file of any size.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>Its bytes.</returns>
    /// <exception cref="IOException">It cannot be read, is a pipe that gives nothing or a device that gives without end.</exception>
    /// <exception cref="UnauthorizedAccessException">Its rights forbid it.</exception>
    public static byte[] Read(string path) => TryRead(path, Array.MaxLength) ?? throw new IOException("it is larger than it says, or larger than can be read");

    /// <summary>Hash of a file of any size.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>SHA-256, lower-case hexadecimal.</returns>
    /// <exception cref="IOException">As for <see cref="Read"/>.</exception>
    /// <exception cref="UnauthorizedAccessException">Its rights forbid it.</exception>
    public static string Sha256(string path)
    {
        if (Length(path) == 0)
        {
            return Convert.ToHexStringLower(SHA256.HashData(Read(path)));
        }

        using FileStream stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    // Of a link the length is that of its own text, so it is followed first.
    private static long Length(string path)
    {
        FileInfo file = new(path);
        return file.LinkTarget is null || file.ResolveLinkTarget(returnFinalTarget: true) is not FileInfo target ? file.Length : target.Length;
    }

    // A byte more than allowed is asked for, so that a file without an end is noticed too.
    private static byte[]? Bytes(string path, long most)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 1);
        int longest = (int)Math.Min(most + 1, Array.MaxLength);
        byte[] buffer = new byte[Math.Clamp(stream.CanSeek ? stream.Length + 1 : 0, Math.Min(FirstBytes, longest), longest)];
        int count = 0;
        while (true)
        {
            int read = stream.Read(buffer, count, buffer.Length - count);
            count += read;
            if (read == 0)
            {
                return count == buffer.Length ? buffer : buffer[..count];
            }

            if (count > most)
            {
                return null;
            }

            if (count == buffer.Length)
            {
                Array.Resize(ref buffer, (int)Math.Min(2L * count, longest));
            }
        }
    }
}

using System.IO.Compression;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Bytes for the page's scripts, packed as zlib (RFC 1950), in a block that no browser runs or shows.</summary>
internal static class PackedBytes
{
    /// <summary>Packs.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <returns>The zlib stream.</returns>
    public static byte[] Pack(byte[] bytes)
    {
        using MemoryStream packed = new();
        using (ZLibStream stream = new(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            stream.Write(bytes);
        }

        return packed.ToArray();
    }

    /// <summary>Writes a block.</summary>
    /// <param name="html">The page.</param>
    /// <param name="id">By which the script finds it.</param>
    /// <param name="packed">The zlib stream.</param>
    public static void Write(HtmlWriter html, string id, byte[] packed)
    {
        html.Raw($"<script type=\"text/plain\" id=\"{id}\">");
        html.Base64(packed);
        html.Raw("</script>\n");
    }
}

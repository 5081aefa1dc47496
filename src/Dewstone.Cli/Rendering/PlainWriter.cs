using System.Text;

namespace Dewstone.Cli.Rendering;

/// <summary>Writes text as <see cref="PlainText"/> has it: names of files and units go to it from many places.</summary>
/// <param name="inner">Where it goes.</param>
/// <param name="keepsColour">Whether colours pass.</param>
internal sealed class PlainWriter(TextWriter inner, bool keepsColour) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write(value.ToString());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(new string(buffer));

    /// <inheritdoc/>
    public override void Write(string? value) => inner.Write(PlainText.Of(value ?? "", keepsColour));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => inner.WriteLine(PlainText.Of(value ?? "", keepsColour));

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();
}

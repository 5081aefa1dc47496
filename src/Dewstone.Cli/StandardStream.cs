using System.Text;

namespace Dewstone.Cli;

/// <summary>
/// A stream of the process that may take no more: its disk is full, it was closed before the program began. For the output that is told as such, so that it is not
/// taken for a fault of the work; for the error stream it is passed over, since there is nobody left to tell.
/// </summary>
/// <param name="inner">The stream.</param>
/// <param name="isError">Whether it is the error stream.</param>
internal sealed class StandardStream(TextWriter inner, bool isError) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        try
        {
            inner.Write(buffer);
        }
        catch (Exception fault) when (IsStreams(fault))
        {
            Pass(fault);
        }
    }

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    public override void Flush() => Try(inner.Flush);

    private static bool IsStreams(Exception fault) => fault is IOException or UnauthorizedAccessException;

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception fault) when (IsStreams(fault))
        {
            Pass(fault);
        }
    }

    private void Pass(Exception fault)
    {
        if (!isError)
        {
            throw new OutputFaultException(fault);
        }
    }
}

using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Tables;

/// <summary>A table as text: RFC 4180 quoting, UTF-8 without byte order mark, LF, numbers from whole units so that no rounding is left to a formatter.</summary>
public sealed class CsvText
{
    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create("\",\r\n");

    private readonly ArrayBufferWriter<byte> buffer = new(4096);
    private bool begun;

    /// <summary>Begins a table.</summary>
    /// <param name="header">Column names joined by commas.</param>
    public CsvText(string header)
    {
        buffer.Write(Encoding.UTF8.GetBytes(header));
        buffer.Write("\n"u8);
    }

    /// <summary>Adds a text field, quoted when it must be.</summary>
    public CsvText Text(string value)
    {
        Separate();
        bool quoted = value.AsSpan().ContainsAny(NeedQuotes);
        buffer.Write(Encoding.UTF8.GetBytes(quoted ? $"\"{value.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : value));
        return this;
    }

    /// <summary>Adds an empty field.</summary>
    public CsvText Empty()
    {
        Separate();
        return this;
    }

    /// <summary>Adds a whole number.</summary>
    public CsvText Whole(long value)
    {
        Separate();
        Digits(value);
        return this;
    }

    /// <summary>Adds a decimal number given in whole units of its last place.</summary>
    /// <param name="units">Value times ten to the power of <paramref name="places"/>.</param>
    /// <param name="places">Decimal places, 1 to 6.</param>
    public CsvText Fixed(long units, int places)
    {
        Separate();
        if (units < 0)
        {
            buffer.Write("-"u8);
            units = -units;
        }

        long one = 1;
        for (int i = 0; i < places; i++)
        {
            one *= 10;
        }

        Digits(units / one);
        buffer.Write("."u8);
        Span<byte> rest = buffer.GetSpan(places);
        long fraction = units % one;
        for (int i = places - 1; i >= 0; i--)
        {
            rest[i] = (byte)('0' + (fraction % 10));
            fraction /= 10;
        }

        buffer.Advance(places);
        return this;
    }

    /// <summary>Adds a figure of six significant digits.</summary>
    public CsvText Figure(double value) => Text((SignificantFigures.Six(value) + 0.0).ToString(CultureInfo.InvariantCulture));

    /// <summary>Adds a length to a tenth of a millimetre; lengths are whole micrometres before they are rounded.</summary>
    public CsvText Millimetres(double metres)
    {
        long micrometres = Rounded(metres * 1e6);
        return Fixed(Rounded(micrometres / 100.0), 1);
    }

    /// <summary>Ends a row.</summary>
    public void EndRow()
    {
        buffer.Write("\n"u8);
        begun = false;
    }

    /// <summary>The table.</summary>
    public byte[] ToBytes() => buffer.WrittenSpan.ToArray();

    /// <summary>Nearest whole number, half away from zero.</summary>
    public static long Rounded(double value) => (long)Math.Round(value, MidpointRounding.AwayFromZero);

    private void Separate()
    {
        if (begun)
        {
            buffer.Write(","u8);
        }

        begun = true;
    }

    private void Digits(long value)
    {
        Utf8Formatter.TryFormat(value, buffer.GetSpan(20), out int written);
        buffer.Advance(written);
    }
}

using System.Runtime.CompilerServices;
using System.Text;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// Collects a page. What stands in the holes of a text added is escaped, always: names come from users. The page is HTML in the syntax of XML,
/// so that a strict reader can check it.
/// </summary>
internal sealed class HtmlWriter
{
    private readonly StringBuilder page = new();

    /// <summary>Adds a line of markup; every hole in it is escaped, in text and in quoted attributes alike.</summary>
    /// <param name="markup">The markup; it is in the page already when this is called.</param>
    public void Add([InterpolatedStringHandlerArgument("")] ref Markup markup)
    {
        _ = markup;
        page.Append('\n');
    }

    /// <summary>Adds what is markup already: the page's own styles and scripts.</summary>
    /// <param name="trusted">Text of the program, never of a user.</param>
    public void Raw(string trusted) => page.Append(trusted);

    /// <summary>Adds bytes in base 64 (RFC 4648, section 4).</summary>
    /// <param name="bytes">The bytes.</param>
    public void Base64(ReadOnlySpan<byte> bytes) => page.Append(Convert.ToBase64String(bytes));

    /// <summary>The page as UTF-8.</summary>
    /// <returns>Its bytes.</returns>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes(page.ToString());

    private void Escape(ReadOnlySpan<char> text)
    {
        foreach (char letter in text)
        {
            _ = letter switch
            {
                '<' => page.Append("&lt;"),
                '>' => page.Append("&gt;"),
                '&' => page.Append("&amp;"),
                '"' => page.Append("&quot;"),
                '\'' => page.Append("&#39;"),
                < ' ' and not ('\t' or '\n') or '\uFFFE' or '\uFFFF' => page.Append('\uFFFD'),
                _ => page.Append(letter),
            };
        }
    }

    /// <summary>An interpolated text on its way into the page.</summary>
    [InterpolatedStringHandler]
    internal readonly ref struct Markup
    {
        private readonly HtmlWriter writer;

        /// <summary>Begins.</summary>
        /// <param name="literalLength">Letters outside the holes.</param>
        /// <param name="holes">Number of holes.</param>
        /// <param name="writer">Where it goes.</param>
        public Markup(int literalLength, int holes, HtmlWriter writer)
        {
            this.writer = writer;
            writer.page.EnsureCapacity(writer.page.Length + literalLength + 8 * holes);
        }

        /// <summary>Adds markup.</summary>
        /// <param name="markup">As it stands in the program.</param>
        public void AppendLiteral(string markup) => writer.page.Append(markup);

        /// <summary>Adds a text, escaped.</summary>
        /// <param name="text">Any text.</param>
        public void AppendFormatted(string? text) => writer.Escape(text);

        /// <summary>Adds a whole number.</summary>
        /// <param name="number">The number.</param>
        public void AppendFormatted(int number) => writer.page.Append(number);

        /// <summary>Adds a length of a drawing, to a hundredth.</summary>
        /// <param name="length">In units of the drawing.</param>
        public void AppendFormatted(double length) => writer.page.Append(Math.Round(length, 2) + 0.0);
    }
}

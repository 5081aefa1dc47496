using Dewstone.Cli.Rendering;

namespace Dewstone.Cli.Tests.Rendering;

/// <summary>What reaches a terminal (ECMA-48): colours of ours where they are wanted, and nothing that moves the cursor.</summary>
public sealed class PlainWriterTests
{
    [Theory]
    [InlineData(false, "a \u00B7[1;31merror\u00B7[0m\tb \u00B7[2J\u00B7\n")]
    [InlineData(true, "a \u001b[1;31merror\u001b[0m\tb \u00B7[2J\u00B7\n")]
    public void Only_colours_pass(bool keepsColour, string expected)
    {
        using StringWriter inner = new();
        using PlainWriter writer = new(inner, keepsColour);

        writer.Write("a \u001b[1;31merror\u001b[0m\tb \u001b[2J\u009b\n");

        Assert.Equal(expected, inner.ToString());
    }
}

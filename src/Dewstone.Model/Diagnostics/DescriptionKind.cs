namespace Dewstone.Model.Diagnostics;

/// <summary>The kinds of description file; the value of the first key <c>kind:</c> in lower case.</summary>
public enum DescriptionKind
{
    /// <summary>A reef unit, <c>*.unit.yaml</c>.</summary>
    Unit,

    /// <summary>A dry mix, <c>*.mix.yaml</c>.</summary>
    Mix,

    /// <summary>A printer, <c>*.printer.yaml</c>.</summary>
    Printer,

    /// <summary>A site at sea, <c>*.site.yaml</c>.</summary>
    Site,

    /// <summary>An order of many units, <c>*.order.yaml</c>.</summary>
    Order,

    /// <summary>What was measured on the night, <c>*.tonight.yaml</c>.</summary>
    Tonight,
}

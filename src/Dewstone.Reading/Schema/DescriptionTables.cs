using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>The key table of each kind of description. A table comes to life when its kind is first asked for.</summary>
internal static class DescriptionTables
{
    /// <summary>All kinds, in the order of the books.</summary>
    public static IReadOnlyList<DescriptionKind> Kinds { get; } =
        [DescriptionKind.Unit, DescriptionKind.Mix, DescriptionKind.Printer, DescriptionKind.Site, DescriptionKind.Order,
            DescriptionKind.Tonight];

    /// <summary>The key table of a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Its table.</returns>
    public static ITable For(DescriptionKind kind) => kind switch
    {
        DescriptionKind.Unit => UnitTable.Table,
        DescriptionKind.Mix => MixTable.Table,
        DescriptionKind.Printer => PrinterTable.Table,
        DescriptionKind.Site => SiteTable.Table,
        DescriptionKind.Order => OrderTable.Table,
        DescriptionKind.Tonight => TonightTable.Table,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind of description."),
    };

    /// <summary>The word of a kind, as in <c>kind: unit</c>.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Its word.</returns>
    public static string Word(DescriptionKind kind) => kind switch
    {
        DescriptionKind.Unit => "unit",
        DescriptionKind.Mix => "mix",
        DescriptionKind.Printer => "printer",
        DescriptionKind.Site => "site",
        DescriptionKind.Order => "order",
        DescriptionKind.Tonight => "tonight",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind of description."),
    };
}

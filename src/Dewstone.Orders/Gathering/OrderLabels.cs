using System.Text;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Emission;

namespace Dewstone.Orders.Gathering;

/// <summary>Writes <c>labels.html</c> of an order: the labels of its bins on one run of sheets, bin by bin in the order of the plan.</summary>
public static class OrderLabels
{
    /// <summary>Path in the order's folder, and of each bin's labels in its job folder.</summary>
    public const string Path = LabelsPage.Path;

    /// <summary>The labels.</summary>
    /// <param name="order">The order.</param>
    /// <param name="labels">Each bin's own labels, as its job holds them.</param>
    /// <returns>The file.</returns>
    /// <exception cref="InvalidDataException">A page is none of ours.</exception>
    public static EmittedFile Emit(GatheredOrder order, IEnumerable<ReadOnlyMemory<byte>> labels)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(labels);
        return LabelsPage.Emit(order.Order.Name, html =>
        {
            foreach (ReadOnlyMemory<byte> page in labels)
            {
                html.Raw(Articles(Encoding.UTF8.GetString(page.Span)));
            }
        });
    }

    // What a bin's page holds was escaped when it was written, and its hash says that it is that page.
    private static string Articles(string page)
    {
        int begin = page.IndexOf(LabelsPage.Begin, StringComparison.Ordinal), end = page.LastIndexOf(LabelsPage.End, StringComparison.Ordinal);
        return begin >= 0 && end > begin ? page[(begin + LabelsPage.Begin.Length)..end] : throw new InvalidDataException($"{Path} of a bin holds no labels.");
    }
}

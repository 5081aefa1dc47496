using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;

namespace Dewstone.Orders.Gathering;

/// <summary>
/// Writes <c>manifest.json</c> of an order: every file that belongs to it with its hash, and the totals. A bin's job stands in it by its own manifest, which
/// lists the rest. No clock, machine, user or task: it is the same however the work was split.
/// </summary>
public static class OrderManifest
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "manifest.json";

    /// <summary>Name of the format.</summary>
    public const string Format = "dewstone-order-manifest";

    private const int Version = 1;

    /// <summary>The manifest.</summary>
    /// <param name="order">The order.</param>
    /// <param name="pin">What its folder was begun with.</param>
    /// <param name="files">Every file by its path in the folder, with its hash.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(GatheredOrder order, OrderPin pin, IReadOnlyCollection<(string Path, string Sha256)> files)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(pin);
        return new EmittedFile(Path, CanonicalJson.Indented(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteString("order", order.Order.Name);
            json.WriteString("order_sha256", order.Plan.OrderHash);
            json.WriteString("tool", order.ToolVersion);
            json.Objects("inputs", pin.Inputs, (InputFile input) =>
            {
                json.WriteString("role", input.Role);
                json.WriteString("file", input.FileName);
                json.WriteString("sha256", input.Sha256);
            });
            json.Object("totals", () => TotalsMembers.Write(json, order.Totals));
            json.Objects("nights", order.Nights, night =>
            {
                json.WriteString("night", night.Day.ToString("yyyy-MM-dd"));
                TotalsMembers.Write(json, night.Totals);
            });
            json.Objects("files", files.OrderBy(file => file.Path, StringComparer.Ordinal), file =>
            {
                json.WriteString("path", file.Path);
                json.WriteString("sha256", file.Sha256);
            });
        }));
    }
}

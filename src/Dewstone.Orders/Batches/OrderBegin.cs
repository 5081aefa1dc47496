using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Listing;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>Begins the folder of an order, or holds the order against what its folder was begun with.</summary>
public static class OrderBegin
{
    /// <summary>What a folder is begun with.</summary>
    /// <param name="reading">The order, read without errors.</param>
    /// <param name="cells">Cells a voxel side.</param>
    /// <param name="toolVersion">Version of the tool.</param>
    /// <returns>The pin.</returns>
    public static OrderPin PinOf(OrderReading reading, int cells, string toolVersion)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new OrderPin
        {
            Name = reading.Order!.Name,
            OrderSha256 = reading.Hash,
            Cells = cells,
            ToolVersion = toolVersion,
            Inputs =
            [
                .. reading.Jobs.SelectMany(jobs => jobs).SelectMany(job => job?.Inputs ?? []).Distinct()
                    .OrderBy(input => input.Role, StringComparer.Ordinal).ThenBy(input => input.FileName, StringComparer.Ordinal).ThenBy(input => input.Sha256, StringComparer.Ordinal),
            ],
            Marks = [.. OrderListing.Of(reading.Order).Select(unit => unit.Mark)],
        };
    }

    /// <summary>Holds a pin against the one in the folder; nothing is written.</summary>
    /// <param name="due">What the order is now.</param>
    /// <param name="folder">The order's folder.</param>
    /// <returns>DW7030 to DW7032, or null when they agree or the folder has none yet.</returns>
    /// <exception cref="IOException">The pin stands but cannot be read.</exception>
    public static Diagnostic? Hold(OrderPin due, OrderFolder folder)
    {
        ArgumentNullException.ThrowIfNull(due);
        ArgumentNullException.ThrowIfNull(folder);
        if (SharedFile.TryRead(folder.Pin) is not { } bytes)
        {
            return null;
        }

        SourceLocation place = new(folder.Pin, 0, 0);
        const string Remedy = "compile into another folder, or put the file back as it was";
        if (RecordJson.ReadPin(bytes) is not { } begun)
        {
            return BatchFindings.OtherOrder.At($"`{folder.Pin}` is cut short or is none of ours", "compile into another folder", location: place);
        }

        if (begun.OrderSha256 != due.OrderSha256)
        {
            return BatchFindings.OtherOrder.At($"`{folder.Root}` was begun with an order of hash {begun.OrderSha256[..12]}, this one has {due.OrderSha256[..12]}", Remedy, location: place);
        }

        if (due.Inputs.Except(begun.Inputs).FirstOrDefault() is { } changed)
        {
            return BatchFindings.OtherInputs.At($"{changed.Role} file `{changed.FileName}` is not what it was when `{folder.Root}` was begun", Remedy, location: place);
        }

        return begun.Cells == due.Cells ? null
            : BatchFindings.OtherCells.At($"`{folder.Root}` was begun with {begun.Cells} cells a voxel side, asked for are {due.Cells}", $"ask for --cells {begun.Cells}, or compile into another folder", location: place);
    }
}

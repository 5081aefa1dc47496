using System.Text;
using Dewstone.Model.Description;

namespace Dewstone.Reading.Tables;

/// <summary>Writes a needles file: what <see cref="NeedleTableReader"/> reads.</summary>
public static class NeedleTableWriter
{
    /// <summary>Writes a table.</summary>
    /// <param name="table">The needles.</param>
    /// <returns>CSV with line feeds: gain to 0.0001, offset to 0.001 mL, flow and repeatability to three decimals.</returns>
    public static string Write(NeedleTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        StringBuilder text = new(NeedleTableReader.Header + "\n");
        foreach (NeedleState needle in table.Needles)
        {
            string state = needle.Condition switch { NeedleCondition.Blocked => "blocked", NeedleCondition.Limited => "limited", _ => "ok" };
            string flow = needle.Flow is { } given ? $"{given.CubicMetresPerSecond * 1e6:0.###}" : "";
            string repeatability = needle.Repeatability is { } share ? $"{share * 100.0:0.###}" : "";
            text.Append($"{needle.Column},{needle.Row},{needle.Board},{needle.Channel},{state},{needle.Gain:0.0000},{needle.OffsetMillilitres:0.000},{flow},{repeatability}\n");
        }

        return text.ToString();
    }
}

using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Sees that keep zones and lifting places are hardened throughout.</summary>
/// <remarks>
/// Of the wanted solid in a zone, all that lies deeper than <see cref="SurfaceDeviation.DeepMetres"/> below the wanted surface should have set. Over a strap the
/// zone is <see cref="StrapMetres"/> wide and <see cref="BearingMetres"/> high along its line under the unit; around an insert it reaches
/// <see cref="CoverMetres"/> beyond the embedded length on all sides. A lifting place is at fault when more than <see cref="LiftingShare"/> of it stays loose;
/// less is a warning. All of these are common practice, no source.
/// </remarks>
internal static class SoundZoneCheck
{
    /// <summary>Width of a strap, metres.</summary>
    public const double StrapMetres = 0.06;

    /// <summary>Height over a strap that bears on it, metres.</summary>
    public const double BearingMetres = 0.1;

    /// <summary>Cover of an insert, metres.</summary>
    public const double CoverMetres = 0.05;

    /// <summary>Share of a lifting place that may stay loose with no more than a warning, 1.</summary>
    public const double LiftingShare = 0.05;

    /// <summary>Checks.</summary>
    /// <param name="job">The unit.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="wanted">Wanted solid.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>The zones, and findings DW3027 and DW3028.</returns>
    public static Checked<IReadOnlyList<SoundZone>> Check(JobDescription job, ReefShape shape, SolidField wanted, PredictedSolid solid)
    {
        List<SoundZone> zones = [];
        for (int zone = 0; zone < job.Unit.Keep.Count; zone++)
        {
            zones.Add(Measure(new KeepRegion(shape, zone), $"keep zone \"{job.Unit.Keep[zone].Name}\"", UnitKeys.Keep(zone), false, wanted, solid));
        }

        KeyPath lifting = UnitKeys.Top("lifting");
        switch (job.Unit.Lifting)
        {
            case StrapLifting straps:
                for (int line = 0; line < straps.Lines.Count; line++)
                {
                    zones.Add(Measure(Strap(straps.Lines[line], shape.Box), $"strap {line + 1}", lifting.Key("lines").Item(line), true, wanted, solid));
                }

                break;
            case InsertLifting inserts:
                for (int point = 0; point < inserts.Points.Count; point++)
                {
                    Point3 top = inserts.Points[point];
                    BarRegion bar = new(top, top - new Point3(0.0, 0.0, Math.Max(1e-3, inserts.Embedment.Metres)), CoverMetres);
                    zones.Add(Measure(bar, $"insert {point + 1}", lifting.Key("points").Item(point), true, wanted, solid));
                }

                break;
        }

        return new Checked<IReadOnlyList<SoundZone>>(zones, [], [.. zones.Where(zone => zone.UnsetShare > 0.0).Select(Unset)]);
    }

    private static BlockRegion Strap(StrapLine line, Size3 box)
    {
        const double Half = 0.5 * StrapMetres;
        double middle = line.At.Metres;
        return line.Along == Axis.X
            ? new BlockRegion(new Point3(0.0, middle - Half, 0.0), new Point3(box.X, middle + Half, BearingMetres))
            : new BlockRegion(new Point3(middle - Half, 0.0, 0.0), new Point3(middle + Half, box.Y, BearingMetres));
    }

    private static SoundZone Measure<TRegion>(TRegion region, string name, KeyPath key, bool isLifting, SolidField wanted, PredictedSolid solid)
        where TRegion : struct, IRegion
    {
        long deep = 0, unset = 0;
        Point3 sum = default;
        if (RegionCells.Of(region, solid.Placement, wanted.Grid) is { } cells)
        {
            for (int i = 0; i < cells.Depths.Length; i++)
            {
                int cell = cells.InGrid(i);
                if (cells.Depths[i] > 0f && wanted.Distances[cell] < -SurfaceDeviation.DeepMetres)
                {
                    deep++;
                    bool isUnset = solid.Moisture.Hardened[cell] == 0;
                    (unset, sum) = isUnset ? (unset + 1, sum + solid.ToUnit(cell)) : (unset, sum);
                }
            }
        }

        return new SoundZone(
            name, key, isLifting, deep == 0 ? 0.0 : (double)unset / deep, unset * wanted.Grid.CellCubicMetres, unset == 0 ? null : sum * (1.0 / unset));
    }

    private static Diagnostic Unset(SoundZone zone)
    {
        FindingKind kind = zone.IsLifting ? InspectionFindings.LiftingUnset : InspectionFindings.KeepUnset;
        return kind.At(
            $"{zone.Name}: {zone.UnsetCubicMetres * 1e6:0.#} mL deeper than {SurfaceDeviation.DeepMetres * 1e3:0} mm stay loose ({100.0 * zone.UnsetShare:0.##} %), about {Wording.Place(zone.Where!.Value)}",
            zone.IsLifting ? "move it, give the place more water, or lift another way" : "give it more water or a finer pitch, or see on the plates whether the place matters",
            zone.Key) with
        {
            Severity = zone.IsLifting && zone.UnsetShare > LiftingShare ? Severity.Error : Severity.Warning, Where = zone.Where,
        };
    }
}

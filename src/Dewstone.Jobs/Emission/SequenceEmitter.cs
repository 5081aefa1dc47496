using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>sequence.csv</c>: what the machine does, in order. Station and place stay empty where the head is parked, the volume where no
/// water flows and the mass where no mix is spread.
/// </summary>
public static class SequenceEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "sequence.csv";

    /// <summary>Column names, in order.</summary>
    public const string Header = "step,layer,station,action,x_mm,y_mm,z_mm,seconds,volume_ml,mass_kg";

    /// <summary>The sequence of a timeline.</summary>
    /// <param name="timeline">The machine's steps.</param>
    /// <param name="isIn">Whether a step belongs into the sequence, which is numbered anew from 1; null for all.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(Timeline timeline, Func<MachineStep, bool>? isIn = null)
    {
        ArgumentNullException.ThrowIfNull(timeline);
        CsvText csv = new(Header);
        int number = 0;
        foreach (MachineStep step in timeline.Steps.Where(step => isIn is null || isIn(step)))
        {
            csv.Whole(++number).Whole(step.Layer);
            _ = step.Station == 0 ? csv.Empty() : csv.Whole(step.Station);
            csv.Text(ActionName(step.Action));
            _ = step.HeadTip is { } tip ? Place(csv, tip) : csv.Empty().Empty().Empty();
            csv.Fixed(step.Milliseconds, 3);
            _ = step.Action is MachineAction.Dose or MachineAction.Flush ? csv.Fixed(step.CentiMillilitres, 2) : csv.Empty();
            _ = step.Action == MachineAction.Spread ? csv.Fixed(CsvText.Rounded(step.MixKilograms * 1000.0), 3) : csv.Empty();
            csv.EndRow();
        }

        return new EmittedFile(Path, csv.ToBytes());
    }

    /// <summary>Name of an action in files.</summary>
    /// <param name="action">The action.</param>
    /// <returns>Lower case, e.g. <c>spread</c>.</returns>
    public static string ActionName(MachineAction action) => action switch
    {
        MachineAction.Spread => "spread",
        MachineAction.Move => "move",
        MachineAction.Plunge => "plunge",
        MachineAction.Dose => "dose",
        MachineAction.Hold => "hold",
        MachineAction.Withdraw => "withdraw",
        MachineAction.Flush => "flush",
        MachineAction.Pause => "pause",
        _ => throw new ArgumentOutOfRangeException(nameof(action), action, "Not an action of the machine."),
    };

    private static CsvText Place(CsvText csv, Point3 tip) => csv.Millimetres(tip.X).Millimetres(tip.Y).Millimetres(tip.Z);
}

using Dewstone.Compute.Sequencing;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>A run log beside the doses planned, position by position.</summary>
internal sealed class RunLogBook
{
    /// <summary>Repeatability taken where neither needle nor printer states one, share.</summary>
    public const double CommonRepeatability = 0.02;

    // Of ten thousand normal doses fewer than one lies beyond.
    private const double AllowedDeviations = 4.0;

    private readonly Dictionary<HeadPlace, LoggedPosition> positions = [];
    private readonly Dictionary<(int Station, int Column, int Row), (int I, int J)> seats = [];
    private readonly HeadNeedles needles;
    private readonly double commonRepeatability;
    private readonly double stepCentiMillilitres;

    /// <summary>Opens a book with what is planned.</summary>
    /// <param name="question">The job and its log.</param>
    public RunLogBook(RunLogQuestion question)
    {
        Question = question;
        Lattice lattice = question.Planned.Lattice;
        needles = HeadNeedles.Of(question.Job.Printer, question.Job.Needles);
        double stated = question.Job.Printer.Needle.Repeatability;
        commonRepeatability = stated > 0.0 ? stated : CommonRepeatability;
        stepCentiMillilitres = question.Job.Printer.Needle.Step.Millilitres * 100.0;
        Stations stations = Stations.Over(question.Job.Printer);
        Raster raster = Raster.Over(question.Job.Printer);
        for (int j = -lattice.FirstRow; j < raster.Rows - lattice.FirstRow; j++)
        {
            for (int i = -lattice.FirstColumn; i < raster.Columns - lattice.FirstColumn; i++)
            {
                StationSeat seat = stations.Seat(lattice, i, j);
                seats[(seat.Station, seat.Column, seat.Row)] = (i, j);
            }
        }

        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    StationSeat seat = stations.Seat(lattice, i, j);
                    if (question.Planned.CentiMillilitres[index] > 0 && question.Job.Stop?.IsDone(k + 1, seat.Station) != true)
                    {
                        Open(new HeadPlace(k + 1, seat.Station, seat.Column, seat.Row), index);
                    }
                }
            }
        }

        Planned = [.. positions.Values.OrderBy(p => p.Place.Block)];
    }

    /// <summary>The job and its log.</summary>
    public RunLogQuestion Question { get; }

    /// <summary>Positions with a planned dose that was still to be given, by layer, then station.</summary>
    public IReadOnlyList<LoggedPosition> Planned { get; }

    /// <summary>All positions that are planned or logged.</summary>
    public IEnumerable<LoggedPosition> All => positions.Values.OrderBy(p => p.Place.Block);

    /// <summary>Layers and stations that were run twice.</summary>
    public HashSet<(int Layer, int Station)> RunTwice { get; } = [];

    /// <summary>Whether the log's times can be used: every row has one and they do not go back.</summary>
    public bool HasTimes { get; set; }

    /// <summary>Enters the log.</summary>
    /// <returns>DW8344 for each row that the printer or the job cannot have.</returns>
    public IReadOnlyList<Diagnostic> Enter()
    {
        Lattice lattice = Question.Planned.Lattice;
        List<Diagnostic> foreign = [];
        foreach (LoggedDose row in Question.Rows)
        {
            HeadPlace place = new(row.Layer, row.Station, row.Column, row.Row);
            if (row.Layer > lattice.Layers || !seats.TryGetValue((row.Station, row.Column, row.Row), out (int I, int J) seat))
            {
                foreign.Add(SurveyFileFindings.NotOfThisJob.At(
                    $"{Say(place)}: " + (row.Layer > lattice.Layers ? $"the job has {lattice.Layers} layers" : "the printer has no such station and needle"),
                    "check job folder and log against each other", location: At(row.Line)));
                continue;
            }

            if (!positions.TryGetValue(place, out LoggedPosition? position))
            {
                bool isInside = seat.I >= 0 && seat.J >= 0 && seat.I < lattice.Columns && seat.J < lattice.Rows && lattice.IsUsable(seat.I, seat.J, row.Layer - 1);
                position = Open(place, isInside ? lattice.Index(seat.I, seat.J, row.Layer - 1) : -1);
            }

            position.Add(row);
        }

        HasTimes = Question.Rows.All(row => row.StartedSeconds is not null);
        return foreign;
    }

    /// <summary>Repeatability of a needle, one standard deviation as a share.</summary>
    /// <param name="needle">The needle.</param>
    /// <returns>Its own, else the printer's, else 2 %.</returns>
    public double Repeatability((int Column, int Row) needle) => needles.State(needle.Column, needle.Row)?.Repeatability is > 0.0 and { } own ? own : commonRepeatability;

    /// <summary>Flow a needle should have, mL/s.</summary>
    /// <param name="needle">The needle.</param>
    /// <returns>Millilitres a second.</returns>
    public double Flow((int Column, int Row) needle) => needles.FlowMillilitresPerSecond(needle.Column, needle.Row);

    /// <summary>Board of a needle; empty when none is known.</summary>
    /// <param name="needle">The needle.</param>
    /// <returns>As printed on it.</returns>
    public string Board((int Column, int Row) needle) => needles.State(needle.Column, needle.Row)?.Board ?? "";

    /// <summary>A line of the log.</summary>
    /// <param name="line">Line; 0 for the whole file.</param>
    /// <returns>The place.</returns>
    public SourceLocation At(int line) => new(Question.File, line, line == 0 ? 0 : 1);

    /// <summary>A finding about a position.</summary>
    /// <param name="kind">Entry of the catalogue.</param>
    /// <param name="position">The position, whose line and place in the unit frame it gets.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    /// <returns>The finding.</returns>
    public Diagnostic Find(FindingKind kind, LoggedPosition position, string message, string remedy)
    {
        Lattice lattice = Question.Planned.Lattice;
        (int i, int j) = seats[(position.Place.Station, position.Place.Column, position.Place.Row)];
        return kind.At(message, remedy, location: At(position.Line)) with { Where = Question.Placement.ToUnit(lattice.Tip(i, j, position.Place.Layer - 1)) };
    }

    /// <summary>A place in words.</summary>
    /// <param name="place">The place.</param>
    /// <returns>For instance <c>layer 7, station 1, needle 4,2</c>.</returns>
    public static string Say(HeadPlace place) => $"layer {place.Layer}, station {place.Station}, needle {place.Column},{place.Row}";

    private LoggedPosition Open(HeadPlace place, int index)
    {
        int planned = index < 0 ? 0 : Question.Planned.CentiMillilitres[index];
        double allowance = stepCentiMillilitres + AllowedDeviations * Repeatability(place.Needle) * planned;
        return positions[place] = new LoggedPosition(place, index, planned, allowance);
    }
}

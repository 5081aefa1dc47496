using System.Globalization;
using System.Text;

namespace Dewstone.Cli.Tests;

/// <summary>A compiled job of eight watered layers from two stations with boards, and its faultless run log. Invented figures.</summary>
public sealed class SurveyYard : IAsyncLifetime
{
    private int files;

    internal SmallYard Yard { get; } = new();

    internal string Job => Yard.In("out", "tall.job");

    /// <summary>Rows of the faultless log, in the order of the machine.</summary>
    internal IReadOnlyList<LogRow> Log { get; private set; } = [];

    public async ValueTask InitializeAsync()
    {
        StringBuilder needles = new("column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n");
        for (int row = 1; row <= 5; row++)
        {
            for (int column = 1; column <= 10; column++)
            {
                needles.Append(CultureInfo.InvariantCulture, $"{column},{row},B{row},{column},ok,1,0,4,2\n");
            }
        }

        Yard.Write("tall.needles.csv", needles.ToString());
        Yard.Write("tall.printer.yaml", SmallYard.Printer.Replace("height: 0.4 m", "height: 0.6 m") + "\nneedles: tall.needles.csv\n");
        Yard.Write("tall.unit.yaml", SmallYard.Unit.Replace("[250 mm, 200 mm, 150 mm]", "[250 mm, 200 mm, 400 mm]").Replace("small.printer", "tall.printer").Replace("mass: {max: 40 kg}", "mass: {max: 46 kg}\n  wall: {min: 20 mm}").Replace("min: 0.50", "min: 0.80")
            .Replace("section: {diameter: 60 mm}", "section: {diameter: 90 mm}\n    clear: 40 mm"));
        Words.Answer answer = await Words.Run("compile", Yard.In("tall.unit.yaml"), "-o", Yard.In("out"), "--cells", "4", "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Log = Faultless();
    }

    public ValueTask DisposeAsync()
    {
        Yard.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>Writes a log with times and states.</summary>
    internal string Write(IEnumerable<LogRow> rows) => Yard.Write(
        $"log{Interlocked.Increment(ref files)}.csv", "layer,station,column,row,delivered_ml,seconds,state,started_s\n" + string.Concat(rows.Select(r => r.Text)));

    private List<LogRow> Faultless()
    {
        Dictionary<(int, int), double> starts = [];
        double clock = 10_000.0;
        foreach (string[] step in File.ReadLines(Path.Combine(Job, "sequence.csv")).Skip(1).Select(line => line.Split(',')))
        {
            if (step[3] == "dose")
            {
                starts[(int.Parse(step[1], CultureInfo.InvariantCulture), int.Parse(step[2], CultureInfo.InvariantCulture))] = clock;
            }

            clock += double.Parse(step[7], CultureInfo.InvariantCulture);
        }

        return [.. Directory.GetFiles(Path.Combine(Job, "doses")).Order(StringComparer.Ordinal).SelectMany(file => File.ReadLines(file).Skip(1)).Select(line => line.Split(','))
            .Select(c => new LogRow(Whole(c[0]), Whole(c[1]), Whole(c[2]), Whole(c[3]), double.Parse(c[9], CultureInfo.InvariantCulture), starts[(Whole(c[0]), Whole(c[1]))]))
            .OrderBy(r => (r.Layer, r.Station))];

        static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
    }
}

/// <summary>A row of a log.</summary>
internal sealed record LogRow(int Layer, int Station, int Column, int Row, double Millilitres, double Started)
{
    public string State { get; init; } = "ok";

    public double? Seconds { get; init; }

    public string Text => string.Create(CultureInfo.InvariantCulture, $"{Layer},{Station},{Column},{Row},{Millilitres:0.00},{Seconds ?? Millilitres / 4.0:0.000},{State},{Started:0.000}\n");
}

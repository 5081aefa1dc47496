using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests.Commands;

public sealed partial class CorrectionTests
{
    [Fact]
    public async Task Json_and_estimate_show_plain_and_corrected_doses_and_the_corrected_ones_fit_better()
    {
        using SmallYard yard = new();
        JsonElement corrected = await Dosing(yard, "corrected");
        Assert.Equal("corrected", corrected.GetProperty("method").GetString());
        double plainMatch = corrected.GetProperty("plain").GetProperty("shape_match").GetDouble();
        Assert.True(corrected.GetProperty("chosen").GetProperty("shape_match").GetDouble() > plainMatch + 0.01, corrected.ToString());
        Assert.True(corrected.GetProperty("misfit_l").GetDouble() < corrected.GetProperty("plain_misfit_l").GetDouble(), corrected.ToString());
        using JsonDocument estimate = JsonDocument.Parse(await File.ReadAllTextAsync(yard.In("corrected", "small.job", "estimate.json")));
        Assert.Equal(corrected.ToString(), estimate.RootElement.GetProperty("dosing").ToString(), ignoreWhiteSpaceDifferences: true);

        // Plain doses are those the corrected job was compared with, to the last figure.
        JsonElement plain = await Dosing(yard, "plain", "--no-correction");
        Assert.Equal("plain", plain.GetProperty("method").GetString());
        Assert.Equal(corrected.GetProperty("plain").ToString(), plain.GetProperty("chosen").ToString());
        double full = plain.GetProperty("plain_full_voxel_ml").GetDouble();
        Assert.Equal(Math.Round(full), full);
    }

    [Fact]
    public async Task Progress_tells_of_a_misfit_that_falls_on_each_fineness_of_cells()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("check", yard.UnitFile);
        (int Cells, double Litres)[] told =
        [
            .. MisfitLine().Matches(answer.Error).Select(m => (int.Parse(m.Groups["cells"].Value, CultureInfo.InvariantCulture), double.Parse(m.Groups["litres"].Value, CultureInfo.InvariantCulture))),
        ];
        Assert.True(told.Length >= 3, answer.Error);
        foreach (IGrouping<int, (int Cells, double Litres)> level in told.GroupBy(t => t.Cells))
        {
            double[] litres = [.. level.Select(t => t.Litres)];
            Assert.Equal(litres.OrderDescending(), litres);
        }

        Assert.True(told.GroupBy(t => t.Cells).Any(level => level.Last().Litres < level.First().Litres), answer.Error);
    }

    private static async Task<JsonElement> Dosing(SmallYard yard, string folder, params string[] more)
    {
        Words.Answer answer = await Words.Run(["compile", yard.UnitFile, "-o", yard.In(folder), "--json", "--quiet", .. more]);
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        return JsonDocument.Parse(answer.Output).RootElement.GetProperty("units")[0].GetProperty("dosing");
    }

    [GeneratedRegex(@"dosing, misfit (?<litres>[0-9.]+) L at (?<cells>[0-9]+) cells a voxel", RegexOptions.NonBacktracking)]
    private static partial Regex MisfitLine();
}

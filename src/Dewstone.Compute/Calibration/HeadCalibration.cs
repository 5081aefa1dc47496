using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Calibration;

/// <summary>A calibrated head.</summary>
/// <param name="Needles">One a needle with readings, by row, then by column.</param>
/// <param name="Table">The needles file: these, and those of the last check that have no new readings.</param>
/// <param name="Advice">What to clean or weigh again, most urgent first.</param>
/// <param name="Findings">DW3050 to DW3052 and DW8326, by line of the table read.</param>
public sealed record HeadCalibration(
    IReadOnlyList<NeedleFit> Needles, NeedleTable Table, IReadOnlyList<NeedleAdvice> Advice, IReadOnlyList<Diagnostic> Findings);

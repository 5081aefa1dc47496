using Dewstone.Model.Description;

namespace Dewstone.Compute.Studies;

/// <summary>One trial: the bed and the doses as they happen to be.</summary>
/// <param name="Job">The job with its mix and its night as drawn.</param>
/// <param name="DosesCubicMetres">What the needles really give, cubic metres; index order of the lattice.</param>
/// <param name="Inputs">What was drawn of each input, larger for more of it: standard deviations; of drift and repeatability the change of all water, a share.</param>
internal sealed record TrialSetting(JobDescription Job, double[] DosesCubicMetres, double[] Inputs);

namespace Dewstone.Jobs.Surveys;

/// <summary>What becomes of a printed unit.</summary>
/// <remarks>
/// Rules, in this order. Hold when the print is not finished: <c>resume</c> decides. Scrap when a requirement that was met as planned is not met as run, or an
/// error about the solid is found that the plan does not have. Hold when any other finding of the survey is an error. Else release.
/// </remarks>
public enum Verdict
{
    /// <summary>It may go its way.</summary>
    Release,

    /// <summary>It waits until someone has looked.</summary>
    Hold,

    /// <summary>It is not what was designed.</summary>
    Scrap,
}

namespace Dewstone.Model.Diagnostics;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing to do.</summary>
    Note,

    /// <summary>May spoil the result; the job is still written.</summary>
    Warning,

    /// <summary>The job must not be printed as it is.</summary>
    Error,
}

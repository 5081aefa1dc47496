namespace Dewstone.Jobs.Surveys;

/// <summary>Measurements from one file.</summary>
/// <typeparam name="T">What was measured.</typeparam>
/// <param name="File">The file as named, for findings.</param>
/// <param name="Rows">Its rows, in order.</param>
public sealed record Measured<T>(string File, IReadOnlyList<T> Rows);

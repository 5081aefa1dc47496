namespace Dewstone.Model.Results;

/// <summary>How many threads a computation may use; no result depends on it.</summary>
/// <param name="Threads">Threads, 1 or more.</param>
public readonly record struct Parallelism(int Threads);

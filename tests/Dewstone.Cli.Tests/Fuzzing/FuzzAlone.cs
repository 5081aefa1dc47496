namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>What is damaged by the thousand is run alone, so that memory and time are its own, and the current folder is its own too.</summary>
[CollectionDefinition(nameof(FuzzAlone), DisableParallelization = true)]
public sealed class FuzzAlone;

namespace Dewstone.Compute.Wetting;

/// <summary>What can cut the time steps, in the order in which it happens at one moment.</summary>
internal enum WettingEventKind
{
    /// <summary>A layer lies spread: its cells exist from now on.</summary>
    Spread,

    /// <summary>A layer's window ends: its water moves no more.</summary>
    Freeze,

    /// <summary>A station delivers a shot.</summary>
    Shot,
}

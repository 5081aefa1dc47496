namespace Dewstone.Compute.Wetting;

/// <summary>What can cut the time steps, in the order in which it happens at one moment.</summary>
internal enum WettingEventKind
{
    /// <summary>A layer lies spread: its cells exist from now on.</summary>
    Spread,

    /// <summary>A layer's window ends: its water moves no more.</summary>
    Freeze,

    /// <summary>The first go of a layer in two goes has wetted what it wets.</summary>
    Mark,

    /// <summary>The window of a layer's first go ends while its second is still to come or to move.</summary>
    Set,

    /// <summary>A station delivers a shot.</summary>
    Shot,
}

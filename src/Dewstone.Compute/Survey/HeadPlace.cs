namespace Dewstone.Compute.Survey;

/// <summary>A place the machine can water: layer, station and needle of the head, all from 1.</summary>
/// <param name="Layer">Layer.</param>
/// <param name="Station">Station.</param>
/// <param name="Column">Column of the needle in the head.</param>
/// <param name="Row">Row of the needle in the head.</param>
internal readonly record struct HeadPlace(int Layer, int Station, int Column, int Row)
{
    /// <summary>Place in the order of the sequence.</summary>
    public (int Layer, int Station) Block => (Layer, Station);

    /// <summary>The needle.</summary>
    public (int Column, int Row) Needle => (Column, Row);
}

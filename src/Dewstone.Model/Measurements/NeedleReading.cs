namespace Dewstone.Model.Measurements;

/// <summary>One weighing of what a needle gave.</summary>
public sealed record NeedleReading
{
    /// <summary>Column in the head, from 1.</summary>
    public required int Column { get; init; }

    /// <summary>Row in the head, from 1.</summary>
    public required int Row { get; init; }

    /// <summary>Volume asked for, millilitres.</summary>
    public required double AskedMillilitres { get; init; }

    /// <summary>Water on the scale, grams.</summary>
    public required double WeighedGrams { get; init; }

    /// <summary>Temperature of the water, degC.</summary>
    public required double WaterCelsius { get; init; }

    /// <summary>Pressure of the air, hPa.</summary>
    public required double AirHectopascals { get; init; }

    /// <summary>Pump board; empty when not given.</summary>
    public string Board { get; init; } = "";

    /// <summary>Channel of the board; empty when not given.</summary>
    public string Channel { get; init; } = "";

    /// <summary>Line in its file, from 1.</summary>
    public required int Line { get; init; }
}

namespace Dewstone.Reading.Quantities;

/// <summary>
/// The one table of units. Inch, foot and pound: the international yard and pound agreement of 1959 (1 yd = 0.9144 m, 1 lb =
/// 0.45359237 kg, exactly); pound-force with the standard gravity 9.80665 m/s2 of the third General Conference on Weights and
/// Measures, 1901; knot: the international nautical mile, 1852 m. A year is the Julian year of 365.25 days. A tonne (t) is 1000 kg;
/// ton and gallon are left out since they mean several things.
/// </summary>
internal static class QuantityKinds
{
    private const double PoundForceTimes1e13 = 44_482_216_152_605.0;

    /// <summary>Length, m.</summary>
    public static readonly QuantityKind Length = new("a length",
        new("mm", 1, 1e3), new("cm", 1, 1e2), new("m"), new("um", 1, 1e6), new("in", 254, 1e4), new("ft", 3048, 1e4));

    /// <summary>Mass, kg.</summary>
    public static readonly QuantityKind Mass = new("a mass",
        new("kg"), new("g", 1, 1e3), new("t", 1e3), new("lb", 45_359_237, 1e8));

    /// <summary>Density, kg/m3.</summary>
    public static readonly QuantityKind Density = new("a density",
        new("kg/m3"), new("g/cm3", 1e3), new("kg/L", 1e3), new("t/m3", 1e3), new("lb/ft3", 45_359_237, 2_831_684.6592));

    /// <summary>Volume, m3.</summary>
    public static readonly QuantityKind Volume = new("a volume",
        new("mL", 1, 1e6), new("L", 1, 1e3), new("m3"), new("cm3", 1, 1e6), new("in3", 16_387_064, 1e12), new("ft3", 28_316_846_592, 1e12));

    /// <summary>Volume flow, m3/s.</summary>
    public static readonly QuantityKind Flow = new("a flow",
        new("mL/s", 1, 1e6), new("mL/min", 1, 6e7), new("L/s", 1, 1e3), new("L/min", 1, 6e4), new("L/h", 1, 3.6e6), new("m3/h", 1, 3600));

    /// <summary>Time, s.</summary>
    public static readonly QuantityKind Time = new("a time",
        new("s"), new("min", 60), new("h", 3600), new("d", 86_400), new("yr", 31_557_600));

    /// <summary>Temperature, degC.</summary>
    public static readonly QuantityKind Temperature = new("a temperature",
        new("degC"), new("degF", 5, 9, -32), new("K", 1, 1, -273.15));

    /// <summary>Temperature difference, K.</summary>
    public static readonly QuantityKind Kelvins = new("a temperature in kelvin", new UnitOfMeasure("K"));

    /// <summary>Angle, degrees.</summary>
    public static readonly QuantityKind Angle = new("an angle", new UnitOfMeasure("deg"));

    /// <summary>Diffusivity, m2/s.</summary>
    public static readonly QuantityKind Diffusivity = new("a diffusivity",
        new("m2/s"), new("cm2/s", 1, 1e4), new("mm2/s", 1, 1e6));

    /// <summary>Pressure, Pa.</summary>
    public static readonly QuantityKind Pressure = new("a pressure",
        new("MPa", 1e6), new("kPa", 1e3), new("Pa"), new("N/mm2", 1e6), new("psi", PoundForceTimes1e13, 6.4516e9));

    /// <summary>Force, N.</summary>
    public static readonly QuantityKind Force = new("a force", new("kN", 1e3), new("N"), new("lbf", PoundForceTimes1e13, 1e13));

    /// <summary>Unit weight, N/m3.</summary>
    public static readonly QuantityKind UnitWeight = new("a weight per volume",
        new("kN/m3", 1e3), new("N/m3"), new("lbf/ft3", PoundForceTimes1e13, 2.8316846592e11));

    /// <summary>Speed, m/s.</summary>
    public static readonly QuantityKind Speed = new("a speed",
        new("m/s"), new("cm/s", 1, 1e2), new("km/h", 1, 3.6), new("kn", 1852, 3600));

    /// <summary>Share, 1.</summary>
    public static readonly QuantityKind Share = new("a share", new UnitOfMeasure("%", 1, 100));

    /// <summary>Mass per mass, 1.</summary>
    public static readonly QuantityKind MassPerMass = new("a mass per mass", new("kg/kg"), new("g/kg", 1, 1e3), new("kg/t", 1, 1e3));

    /// <summary>Price per mass, currency per kg.</summary>
    public static readonly QuantityKind PricePerMass = new("a price per mass",
        new("/kg"), new("/t", 1, 1e3), new("/lb", 1e8, 45_359_237));

    /// <summary>Price per volume, currency per litre.</summary>
    public static readonly QuantityKind PricePerVolume = new("a price per volume", new("/L"), new("/m3", 1, 1e3));

    /// <summary>Mass stirred into a litre, g.</summary>
    public static readonly QuantityKind MassInLitre = new("a mass for each litre", new("g"), new("mg", 1, 1e3), new("kg", 1e3));

    /// <summary>Layers, counted.</summary>
    public static readonly QuantityKind Layers = new("a number of layers", new("layers"), new("layer"));

    /// <summary>Places, counted.</summary>
    public static readonly QuantityKind Places = new("a number of places", new("places"), new("place"));

    /// <summary>Latitude, degrees, north positive.</summary>
    public static readonly QuantityKind Latitude = new("a latitude", new("N"), new("S", -1));

    /// <summary>Longitude, degrees, east positive.</summary>
    public static readonly QuantityKind Longitude = new("a longitude", new("E"), new("W", -1));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<QuantityKind> All =>
    [
        Length, Mass, Density, Volume, Flow, Time, Temperature, Kelvins, Angle, Diffusivity, Pressure, Force, UnitWeight, Speed, Share,
        MassPerMass, PricePerMass, PricePerVolume, MassInLitre, Layers, Places, Latitude, Longitude,
    ];
}

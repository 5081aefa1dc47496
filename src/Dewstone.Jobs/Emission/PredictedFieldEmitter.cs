using System.Runtime.InteropServices;
using Dewstone.Jobs.Emission.Fields;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>predicted.vti</c>: per cell water/cement in whole steps of 0.0001 (rounded half up, at most 6.5535) and whether it hardened.
/// Index order x fastest, then y, then z; printer frame, metres.
/// </summary>
public static class PredictedFieldEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "predicted.vti";

    /// <summary>Name of the array of water/cement.</summary>
    public const string WaterCement = "water_cement";

    /// <summary>Name of the array that is 1 where the mix hardened, else 0.</summary>
    public const string Hardened = "hardened";

    /// <summary>Water/cement of one step of the array, 1.</summary>
    public const double Step = 0.0001;

    private const double StepsPerUnit = 10000.0;

    /// <summary>The predicted field of a job.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="parallelism">Threads; no byte depends on it.</param>
    /// <param name="cancellationToken">Looked at between blocks of cells.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(MoistureResult moisture, Parallelism parallelism, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(moisture);
        double stepsPerContent = StepsPerUnit * moisture.LiquidKilogramsPerCubicMetre / moisture.BinderKilogramsPerCubicMetre;
        float[] content = moisture.VolumetricWaterContent;
        CellArray[] arrays =
        [
            new(WaterCement, "UInt16", 2, (first, into) => Quantise(content.AsSpan(first), stepsPerContent, MemoryMarshal.Cast<byte, ushort>(into))),
            new(Hardened, "UInt8", 1, (first, into) => moisture.Hardened.AsSpan(first, into.Length).CopyTo(into)),
        ];
        return new EmittedFile(
            Path, FieldFile.Write(moisture.Grid, arrays, [new NamedAmount("water_cement_step", Step)], parallelism, cancellationToken));
    }

    private static void Quantise(ReadOnlySpan<float> content, double stepsPerContent, Span<ushort> into)
    {
        for (int i = 0; i < into.Length; i++)
        {
            into[i] = (ushort)Math.Min(double.ConvertToIntegerNative<int>(content[i] * stepsPerContent + 0.5), ushort.MaxValue);
        }
    }
}

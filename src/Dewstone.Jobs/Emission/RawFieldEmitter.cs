using System.Runtime.InteropServices;
using Dewstone.Jobs.Emission.Fields;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>Writes <c>predicted-field.vti</c>: the volumetric water content of each cell as simulated. Index order x fastest, then y, then z; printer frame, metres.</summary>
public static class RawFieldEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "predicted-field.vti";

    /// <summary>Name of its array.</summary>
    public const string Content = "volumetric_water_content";

    /// <summary>The raw field of a job.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="parallelism">Threads; no byte depends on it.</param>
    /// <param name="cancellationToken">Looked at between blocks of cells.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(MoistureResult moisture, Parallelism parallelism, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(moisture);
        float[] content = moisture.VolumetricWaterContent;
        CellArray array = new(
            Content, "Float32", 4, (first, into) => content.AsSpan(first, into.Length / 4).CopyTo(MemoryMarshal.Cast<byte, float>(into)));
        return new EmittedFile(Path, FieldFile.Write(moisture.Grid, [array], [], parallelism, cancellationToken));
    }
}

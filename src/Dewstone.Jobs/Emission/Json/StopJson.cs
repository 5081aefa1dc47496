using System.Text.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>The stop after which a job prints the rest of another.</summary>
internal static class StopJson
{
    /// <summary>Name of the member.</summary>
    public const string Name = "resumed_from";

    /// <summary>Writes the members into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, PrintStop stop)
    {
        json.WriteString("job_fingerprint", stop.JobFingerprint);
        json.WriteNumber("after_layer", stop.AfterLayer);
        json.WriteNumber("station", stop.Station);
        json.Number("pause_s", stop.PauseSeconds);
    }
}

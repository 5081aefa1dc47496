namespace Dewstone.Compute.Inspection;

/// <summary>Signed distances with the areas they stand for; each has its own slot, so that threads may fill them.</summary>
/// <param name="count">Number of samples.</param>
internal sealed class DeviationSamples(int count)
{
    private const int Classes = 4096;
    private readonly double[] distances = new double[count];
    private readonly double[] areas = new double[count];
    private readonly double[] leftOut = new double[count];

    /// <summary>Fills a slot.</summary>
    /// <param name="index">Slot.</param>
    /// <param name="distance">Signed distance, metres.</param>
    /// <param name="area">Area it stands for, square metres.</param>
    /// <param name="isLeftOut">Whether it counts for none of the figures.</param>
    public void Set(int index, double distance, double area, bool isLeftOut)
    {
        distances[index] = isLeftOut ? 0.0 : distance;
        areas[index] = isLeftOut ? 0.0 : area;
        leftOut[index] = isLeftOut ? area : 0.0;
    }

    /// <summary>Mean of the magnitudes, weighted by area.</summary>
    /// <returns>Metres; 0 without area.</returns>
    public double Mean() => Weighted(Math.Abs);

    /// <summary>Mean with sign, weighted by area.</summary>
    /// <returns>Metres; 0 without area.</returns>
    public double SignedMean() => Weighted(d => d);

    /// <summary>Area left out among the first samples.</summary>
    /// <param name="first">How many samples.</param>
    /// <returns>Square metres.</returns>
    public double LeftOutArea(int first)
    {
        double sum = 0.0;
        for (int i = 0; i < first; i++)
        {
            sum += leftOut[i];
        }

        return sum;
    }

    /// <summary>The magnitude below which a share of the area lies.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>Metres; 0 without area.</returns>
    public double Percentile(double share)
    {
        double all = 0.0, greatest = 0.0;
        for (int i = 0; i < distances.Length; i++)
        {
            all += areas[i];
            greatest = Math.Max(greatest, Math.Abs(distances[i]));
        }

        if (all <= 0.0 || greatest <= 0.0)
        {
            return 0.0;
        }

        // Areas by classes of magnitude find the class it lies in; only the samples of that one are put in order.
        double[] classes = new double[Classes];
        double perClass = (Classes - 1) / greatest;
        for (int i = 0; i < distances.Length; i++)
        {
            classes[(int)(Math.Abs(distances[i]) * perClass)] += areas[i];
        }

        double below = 0.0;
        int found = 0;
        while (found < Classes - 1 && below + classes[found] < share * all)
        {
            below += classes[found++];
        }

        return WithinClass(found, perClass, below, share * all);
    }

    private double WithinClass(int found, double perClass, double below, double wanted)
    {
        List<(double Magnitude, double Area)> samples = [];
        for (int i = 0; i < distances.Length; i++)
        {
            if (areas[i] > 0.0 && (int)(Math.Abs(distances[i]) * perClass) == found)
            {
                samples.Add((Math.Abs(distances[i]), areas[i]));
            }
        }

        samples.Sort();
        foreach ((double magnitude, double area) in samples)
        {
            below += area;
            if (below >= wanted)
            {
                return magnitude;
            }
        }

        return samples.Count > 0 ? samples[^1].Magnitude : 0.0;
    }

    private double Weighted(Func<double, double> value)
    {
        double sum = 0.0, all = 0.0;
        for (int i = 0; i < distances.Length; i++)
        {
            sum += value(distances[i]) * areas[i];
            all += areas[i];
        }

        return all > 0.0 ? sum / all : 0.0;
    }
}

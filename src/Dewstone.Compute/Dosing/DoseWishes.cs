namespace Dewstone.Compute.Dosing;

/// <summary>The volumes a correction wishes for, moved step by step in their logarithms; a dose keeps its sign and its wish even while rounding gives it nothing.</summary>
internal sealed class DoseWishes
{
    private readonly double[] speeds;
    private readonly double[]? like;

    /// <summary>Wishes to start from.</summary>
    /// <param name="millilitres">Wanted volumes, mL; index order of the lattice.</param>
    /// <param name="isFree">Positions that may move.</param>
    /// <param name="like">Doses to stay near, mL; null for none.</param>
    public DoseWishes(double[] millilitres, bool[] isFree, double[]? like)
    {
        Millilitres = millilitres;
        IsFree = isFree;
        Misfits = new double[millilitres.Length];
        speeds = new double[millilitres.Length];
        this.like = like;
    }

    /// <summary>Wanted volumes, mL.</summary>
    public double[] Millilitres { get; }

    /// <summary>Positions that may move.</summary>
    public bool[] IsFree { get; }

    /// <summary>What the surroundings of each needle lack, 1.</summary>
    public double[] Misfits { get; }

    /// <summary>Moves every free dose by its misfit.</summary>
    /// <param name="rule">Gain, momentum and the longest step.</param>
    /// <param name="likeWeight">Pull towards the doses to stay near, 0 to 1.</param>
    /// <param name="least">Least wish, mL: small enough to be rounded to nothing, large enough to come back.</param>
    /// <param name="most">Greatest wish, mL.</param>
    public void Move(CorrectionRule rule, double likeWeight, double least, double most)
    {
        for (int i = 0; i < Millilitres.Length; i++)
        {
            if (!IsFree[i])
            {
                continue;
            }

            double step = Math.Clamp(rule.Gain * Misfits[i], -rule.MostStep, rule.MostStep);
            speeds[i] = rule.Momentum * speeds[i] + step;
            double wish = Millilitres[i] * Numerics.Elementary.Exp(speeds[i]);
            if (like is not null)
            {
                wish -= likeWeight * (wish - like[i]);
            }

            Millilitres[i] = Math.Min(Math.Max(wish, least), most);
        }
    }
}

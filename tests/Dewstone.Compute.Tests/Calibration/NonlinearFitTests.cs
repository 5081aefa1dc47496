using Dewstone.Compute.Calibration;

namespace Dewstone.Compute.Tests.Calibration;

/// <summary>NIST Statistical Reference Datasets, nonlinear regression: both starts of each, certified values.</summary>
public sealed class NonlinearFitTests
{
    [Theory]
    [InlineData(500.0, 0.0001)]
    [InlineData(250.0, 0.0005)]
    public void Misra1a_has_its_certified_values(double first, double second)
    {
        double[] x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
        double[] y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];
        NonlinearFit fit = NonlinearFit.Of(p => [.. x.Select(at => p[0] * (1.0 - Math.Exp(-p[1] * at)))], y, [first, second], [1e-3, 1e-9]);
        Near(2.3894212918E+02, fit.Parameters[0], 1e-9);
        Near(5.5015643181E-04, fit.Parameters[1], 1e-9);
        Near(2.7070075241E+00, fit.Error(0), 1e-7);
        Near(7.2668688436E-06, fit.Error(1), 1e-7);
        Near(1.2455138894E-01, fit.ResidualSquares, 1e-9);
        Assert.Equal(12, fit.DegreesOfFreedom);
    }

    [Theory]
    [InlineData(1.0, 5.0)]
    [InlineData(0.7, 4.0)]
    public void DanWood_has_its_certified_values(double first, double second)
    {
        double[] x = [1.309, 1.471, 1.490, 1.565, 1.611, 1.680];
        double[] y = [2.138, 3.421, 3.597, 4.340, 4.882, 5.660];
        NonlinearFit fit = NonlinearFit.Of(p => [.. x.Select(at => p[0] * Math.Pow(at, p[1]))], y, [first, second], [1e-6, 1e-6]);
        Near(7.6886226176E-01, fit.Parameters[0], 1e-9);
        Near(3.8604055871E+00, fit.Parameters[1], 1e-9);
        Near(1.8281973860E-02, fit.Error(0), 1e-7);
        Near(5.1726610913E-02, fit.Error(1), 1e-7);
        Near(4.3173084083E-03, fit.ResidualSquares, 1e-9);
    }

    private static void Near(double expected, double found, double share) => Assert.InRange(found / expected, 1.0 - share, 1.0 + share);
}

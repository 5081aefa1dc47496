using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.Optimization;

namespace Dewstone.Compute.Calibration;

/// <summary>A model fitted to observations by nonlinear least squares (Levenberg and Marquardt), with the covariance of its figures.</summary>
/// <remarks>
/// Residuals are taken as independent and of one size: scale observations and model by their standard deviations first. Covariance = inverse of J'J at the
/// least squares, times <see cref="Variance"/> where the size of the errors is not known beforehand; J by central differences. First order: good where the
/// model is nearly straight over the interval. An interval wider than a factor of two is an order of magnitude only.
/// </remarks>
public sealed class NonlinearFit
{
    private const double Tolerance = 1e-15;
    private const int MostIterations = 500;

    private NonlinearFit(double[] parameters, Matrix<double> jacobian, double residualSquares)
    {
        (Parameters, Jacobian, ResidualSquares) = (parameters, jacobian, residualSquares);
    }

    /// <summary>The fitted figures.</summary>
    public double[] Parameters { get; }

    /// <summary>Residual sum of squares.</summary>
    public double ResidualSquares { get; }

    /// <summary>Observations less fitted figures.</summary>
    public int DegreesOfFreedom => Jacobian.RowCount - Parameters.Length;

    /// <summary>Residual sum of squares over degrees of freedom.</summary>
    public double Variance => ResidualSquares / DegreesOfFreedom;

    /// <summary>Change of each observation with each figure: observations down, figures across.</summary>
    internal Matrix<double> Jacobian { get; }

    /// <summary>Inverse of J'J.</summary>
    internal Matrix<double> Cofactors
    {
        get
        {
            // By R of J = QR: J'J itself would square the condition number.
            Matrix<double> inverse = Jacobian.QR().R.Inverse();
            return inverse * inverse.Transpose();
        }
    }

    /// <summary>Standard error of a figure, errors of the observations estimated from the residuals.</summary>
    /// <param name="index">Figure, from 0.</param>
    /// <returns>Standard error.</returns>
    public double Error(int index) => Math.Sqrt(Variance * Cofactors[index, index]);

    /// <summary>Fits.</summary>
    /// <param name="model">Computed observations of given figures.</param>
    /// <param name="observed">Observations.</param>
    /// <param name="start">Figures to start from.</param>
    /// <param name="steps">Step of each figure for differences.</param>
    /// <returns>The fit.</returns>
    public static NonlinearFit Of(Func<double[], double[]> model, double[] observed, double[] start, double[] steps)
    {
        ArgumentNullException.ThrowIfNull(model);
        Vector<double> y = DenseVector.OfArray(observed);
        IObjectiveModel objective = ObjectiveFunction.NonlinearModel(
            (p, _) => DenseVector.OfArray(model(p.ToArray())), (p, _) => JacobianAt(model, p.ToArray(), steps, observed.Length), y, y);
        NonlinearMinimizationResult found = new LevenbergMarquardtMinimizer(1e-3, Tolerance, Tolerance, Tolerance, MostIterations)
            .FindMinimum(objective, DenseVector.OfArray(start));
        double[] parameters = found.MinimizingPoint.ToArray();
        double[] computed = model(parameters);
        double squares = 0.0;
        for (int i = 0; i < observed.Length; i++)
        {
            squares += (observed[i] - computed[i]) * (observed[i] - computed[i]);
        }

        return new NonlinearFit(parameters, JacobianAt(model, parameters, steps, observed.Length), squares);
    }

    /// <summary>Change of each observation with each figure, by central differences.</summary>
    internal static Matrix<double> JacobianAt(Func<double[], double[]> model, double[] parameters, double[] steps, int observations)
    {
        Matrix<double> jacobian = new DenseMatrix(observations, parameters.Length);
        for (int j = 0; j < parameters.Length; j++)
        {
            double[] above = [.. parameters], below = [.. parameters];
            above[j] += steps[j];
            below[j] -= steps[j];
            double[] high = model(above), low = model(below);
            for (int i = 0; i < observations; i++)
            {
                jacobian[i, j] = (high[i] - low[i]) / (above[j] - below[j]);
            }
        }

        return jacobian;
    }
}

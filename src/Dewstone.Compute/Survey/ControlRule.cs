namespace Dewstone.Compute.Survey;

/// <summary>Rules by which a point of a control chart is out of control.</summary>
public enum ControlRule
{
    /// <summary>One point beyond three standard deviations.</summary>
    BeyondThree,

    /// <summary>Two of three points beyond two standard deviations on the same side.</summary>
    TwoOfThreeBeyondTwo,

    /// <summary>Four of five points beyond one standard deviation on the same side.</summary>
    FourOfFiveBeyondOne,

    /// <summary>Eight points in a row on one side of the mean.</summary>
    EightOnOneSide,

    /// <summary>A moving range above its upper limit.</summary>
    RangeBeyond,
}

namespace Dewstone.Model.Results;

/// <summary>One reef unit on the scale.</summary>
/// <param name="Mark">Its mark, with the date in brackets where there is one.</param>
/// <param name="Kilograms">What the scale said, kg.</param>
/// <param name="Line">Line of the file.</param>
public readonly record struct WeighedUnit(string Mark, double Kilograms, int Line);

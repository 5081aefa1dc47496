namespace Dewstone.Model.Results;

/// <summary>A file the job was made from.</summary>
/// <param name="Role">What it is: unit, mix, printer, needles, site, tonight, or after a stop job and run_log.</param>
/// <param name="FileName">Its name without folders.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record InputFile(string Role, string FileName, string Sha256);

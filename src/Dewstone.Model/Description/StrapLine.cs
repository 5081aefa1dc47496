using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A strap that runs along an axis (x or y) under the unit.</summary>
/// <param name="Along">Direction of the strap under the unit.</param>
/// <param name="At">Its position on the other horizontal axis, unit frame.</param>
public sealed record StrapLine(Axis Along, Length At);

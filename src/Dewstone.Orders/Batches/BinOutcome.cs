using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Batches;

/// <summary>What a run made of one bin.</summary>
/// <param name="Name">Name of the bin.</param>
/// <param name="Record">Its record; null when it was not written.</param>
/// <param name="Units">Records of its units, as far as it came.</param>
/// <param name="Kept">Whether it was done before and kept.</param>
/// <param name="Status">How writing went.</param>
/// <param name="OurFault">Whether a fault of the program stopped it.</param>
/// <param name="Findings">What there is to say of this run beside the records.</param>
public sealed record BinOutcome(
    string Name, BinRecord? Record, IReadOnlyList<UnitRecord> Units, bool Kept, JobFolderStatus Status, bool OurFault, IReadOnlyList<Diagnostic> Findings);

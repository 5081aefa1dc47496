using Dewstone.Model.Results;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>An order to compile, or a task's share of it.</summary>
public sealed record BatchQuestion
{
    /// <summary>The order as read, without errors.</summary>
    public required OrderReading Reading { get; init; }

    /// <summary>Its plan.</summary>
    public required OrderPlan Plan { get; init; }

    /// <summary>The order's folder.</summary>
    public required OrderFolder Folder { get; init; }

    /// <summary>Cells a voxel side.</summary>
    public required int Cells { get; init; }

    /// <summary>Threads in all.</summary>
    public required Parallelism Parallelism { get; init; }

    /// <summary>Version of the tool.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>Task, from 0; null for the whole order.</summary>
    public int? Task { get; init; }

    /// <summary>Number of tasks.</summary>
    public int Tasks { get; init; } = 1;

    /// <summary>Keep bins that are done and sound; false to make them anew from the store.</summary>
    public bool Continue { get; init; }
}

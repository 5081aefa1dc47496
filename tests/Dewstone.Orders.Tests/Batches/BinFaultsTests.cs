using Dewstone.Jobs.Folders;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;
using Dewstone.Reading;
using Dewstone.Tests;

namespace Dewstone.Orders.Tests.Batches;

public sealed class BinFaultsTests
{
    [Fact]
    public void Want_of_memory_and_a_full_disk_may_go_well_on_another_try()
    {
        BinOutcome memory = BinFaults.Stopped("yard-001", new AggregateException(new InsufficientMemoryException()));
        Assert.Equal(("DW7038", JobFolderStatus.TryAgain, false), (memory.Findings[0].Code, memory.Status, memory.OurFault));
        BinOutcome full = BinFaults.Stopped("yard-001", new IOException("No space left on device", 28));
        Assert.Equal(("DW8103", JobFolderStatus.TryAgain), (full.Findings[0].Code, full.Status));
        Assert.Equal(JobFolderStatus.CannotCreate, BinFaults.Stopped("yard-001", new UnauthorizedAccessException()).Status);
    }

    [Fact]
    public void A_fault_of_the_program_stops_its_bin_and_not_the_rest()
    {
        using TinyOrder order = new(3);
        OrderFolder folder = new(order.Plan(order.In("out")));
        OrderReading reading = DescriptionReader.ReadOrderFiles(order.File);
        OrderPlan plan = PlanJson.Read(File.ReadAllBytes(folder.Plan), "plan.json", reading.Hash).Plan!;
        // The first line's units have no standing, which no plan that was read can have; TB-001 stands alone in the second bin.
        OrderPlan broken = plan with { Footings = [plan.Footings[0] with { Wish = null! }, plan.Footings[1]] };

        BatchResult result = OrderCompiler.Compile(
            new BatchQuestion { Reading = reading, Plan = broken, Folder = folder, Cells = 4, Parallelism = new Parallelism(2), ToolVersion = "0.0.0" }, null, TestContext.Current.CancellationToken);

        Assert.Equal(("DW7037", true), (result.Bins[0].Findings[0].Code, result.Bins[0].OurFault));
        Assert.Equal(["TB-001"], result.Bins[1].Record!.Units);
        Assert.Equal(0, result.Bins[1].Record!.ExitCode);
        Assert.False(File.Exists(folder.Bin("small-001")));
    }
}

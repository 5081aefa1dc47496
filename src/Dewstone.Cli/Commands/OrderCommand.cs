using System.CommandLine;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order</c>: whole orders.</summary>
internal static class OrderCommand
{
    public static Command Create(Surroundings world) => new("order", "Plan, compile and gather a whole order of units.")
    {
        OrderPlanCommand.Create(world),
        OrderCompileCommand.Create(world),
        OrderStatusCommand.Create(world),
        OrderGatherCommand.Create(world),
    };
}

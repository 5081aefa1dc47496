namespace Dewstone.Orders.Gathering;

/// <summary>Tasks to run again.</summary>
/// <param name="Of">Number of tasks the order was split into.</param>
/// <param name="Numbers">Their numbers from 0 in the array syntax of batch queues, such as <c>2,7-9</c>.</param>
public sealed record MissingTasks(int Of, string Numbers);

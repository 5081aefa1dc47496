namespace Dewstone.Cli;

/// <summary>Standard output takes no more.</summary>
/// <param name="fault">What the system said.</param>
internal sealed class OutputFaultException(Exception fault) : Exception(fault.Message, fault)
{
    /// <summary>Whether another try may go well: a full disk does, a closed stream does not.</summary>
    public bool MayPass => InnerException is IOException;
}

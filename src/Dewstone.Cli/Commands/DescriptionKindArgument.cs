using System.CommandLine;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Commands;

/// <summary>The word for a kind of description: unit, mix, printer, site, order or tonight.</summary>
internal static class DescriptionKindArgument
{
    private static readonly string[] Words = [.. Enum.GetNames<DescriptionKind>().Select(n => n.ToLowerInvariant())];

    public static Argument<DescriptionKind> Create()
    {
        Argument<DescriptionKind> kind = new("KIND")
        {
            HelpName = "KIND",
            Description = $"One of {string.Join(", ", Words)}.",
            CustomParser = result =>
            {
                string text = result.Tokens[^1].Value;
                int index = Array.IndexOf(Words, text);
                if (index < 0)
                {
                    result.AddError($"there is no kind '{text}'; take one of {string.Join(", ", Words)}.");
                    return default;
                }

                return (DescriptionKind)index;
            },
        };
        kind.CompletionSources.Clear();
        kind.CompletionSources.Add(_ => Words.Select(w => new System.CommandLine.Completions.CompletionItem(w)));
        return kind;
    }
}

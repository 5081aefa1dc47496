using System.CommandLine;
using System.Text;

namespace Dewstone.Cli.Rendering;

/// <summary>
/// The manual page, written from the same table of commands that reads the words. Source of the macros: groff_man(7), as common to groff and mandoc.
/// </summary>
internal static class ManualPage
{
    // An option that so many commands take with the same meaning is described once, at the end.
    private const int CommandsThatShare = 4;

    /// <summary>The page.</summary>
    /// <param name="root">The table of commands.</param>
    /// <returns>Roff in ASCII, with the man macros.</returns>
    public static string Of(RootCommand root)
    {
        List<(string Path, Command Command)> leaves = [.. Leaves("", root)];
        List<Option> shared = [.. leaves.SelectMany(leaf => leaf.Command.Options).Where(option => !option.Hidden)
            .GroupBy(option => (option.Name, option.Description)).Where(alike => alike.Count() >= CommandsThatShare).Select(alike => alike.First())
            .OrderBy(option => option.Name, StringComparer.Ordinal)];
        HashSet<(string, string?)> sharedNames = [.. shared.Select(option => (option.Name, option.Description))];

        StringBuilder page = new();
        page.Append($".TH DEWSTONE 1 \"\" \"Dewstone {ToolVersion.Text}\" \"User Commands\"\n");
        page.Append(".SH NAME\ndewstone \\- compile the description of a reef unit into a print job\n");
        page.Append(".SH SYNOPSIS\n.B dewstone\n.I command\n.RI [ words ]\n");
        page.Append($".SH DESCRIPTION\n{Escape(root.Description)}\n");
        page.Append(".PP\nA finding\\(aqs page is read with\n.BR \"dewstone explain\" ,\na description is begun with\n.BR \"dewstone new\" .\nUsage of one command:\n.B dewstone\n.I command\n.BR \\-\\-help .\n");
        page.Append(".SH COMMANDS\n");
        foreach ((string path, Command command) in leaves)
        {
            Section(page, path, command, sharedNames);
        }

        page.Append(".SH OPTIONS OF SEVERAL COMMANDS\n");
        foreach (Option option in shared.Concat(root.Options.Where(o => !o.Hidden)))
        {
            Entry(page, option);
        }

        page.Append(".SH EXIT STATUS\n");
        foreach ((string code, string meaning) in ExitCode.Meanings)
        {
            page.Append($".TP\n.B {code}\n{Escape(meaning)}\n");
        }

        page.Append(".SH ENVIRONMENT\n");
        page.Append(".TP\n.B NO_COLOR\nWhen it is set, text is not coloured.\n");
        page.Append($".TP\n.B {ProcessorAllowance.Granted}\nNo more threads are used than a batch queue says here that it granted.\n");
        return page.ToString();
    }

    private static IEnumerable<(string Path, Command Command)> Leaves(string path, Command command) =>
        command.Subcommands.Where(sub => !sub.Hidden).SelectMany(sub =>
            sub.Subcommands.Count == 0 ? [($"{path}{sub.Name}", sub)] : Leaves($"{path}{sub.Name} ", sub));

    private static void Section(StringBuilder page, string path, Command command, HashSet<(string, string?)> shared)
    {
        List<Option> visible = [.. command.Options.Where(option => !option.Hidden)];
        page.Append($".SS {path}\n\\fBdewstone {path}\\fR");
        foreach (Argument argument in command.Arguments)
        {
            string name = $"\\fI{Escape(argument.Name)}\\fR{(argument.Arity.MaximumNumberOfValues > 1 ? "\\|.\\|.\\|." : "")}";
            page.Append(argument.Arity.MinimumNumberOfValues == 0 ? $" [{name}]" : $" {name}");
        }

        page.Append(string.Concat(visible.Where(option => option.Required).Select(option => $" {Words(option, [option.Name])}")));
        page.Append(visible.Exists(option => !option.Required) ? " [\\fIoptions\\fR]\n" : "\n");
        page.Append($".PP\n{Escape(command.Description)}\n");
        foreach (Argument argument in command.Arguments)
        {
            page.Append($".TP\n\\fI{Escape(argument.Name)}\\fR\n{Escape(argument.Description)}\n");
        }

        foreach (Option option in visible.Where(option => !shared.Contains((option.Name, option.Description))))
        {
            Entry(page, option);
        }

        if (visible.FindAll(option => shared.Contains((option.Name, option.Description))) is { Count: > 0 } others)
        {
            page.Append($".PP\nAlso {string.Join(", ", others.Select(option => $"\\fB{Escape(option.Name)}\\fR"))}: see below.\n");
        }
    }

    private static void Entry(StringBuilder page, Option option) =>
        page.Append($".TP\n{Words(option, option.Aliases.Prepend(option.Name))}\n{Escape(option.Description)}\n");

    private static string Words(Option option, IEnumerable<string> names)
    {
        string list = string.Join(", ", names.Select(name => $"\\fB{Escape(name)}\\fR"));
        return option.HelpName is { } value ? $"{list} \\fI{Escape(value)}\\fR" : list;
    }

    // A line that began with a dot or a quote would be read as a macro; a plain hyphen in an option is not the one that is typed.
    private static string Escape(string? text)
    {
        string safe = (text ?? "").Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return safe.StartsWith('.') || safe.StartsWith('\'') ? $"\\&{safe}" : safe;
    }
}

using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>A report as text and as read by a strict reader.</summary>
internal sealed partial class SamplePage
{
    private SamplePage(EmittedFile file)
    {
        File = file;
        Text = Encoding.UTF8.GetString(file.Bytes.Span);

        // What stands in scripts and styles is no markup: HTML reads it to the closing tag.
        string bare = Opaque().Replace(Text, "<${tag}${rest}></${tag}>");
        using XmlReader reader = XmlReader.Create(new StringReader(bare), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        Root = XDocument.Load(reader).Root!;
    }

    /// <summary>The file.</summary>
    public EmittedFile File { get; }

    /// <summary>The whole page.</summary>
    public string Text { get; }

    /// <summary>The page read as XML, without the content of scripts and styles.</summary>
    public XElement Root { get; }

    /// <summary>The report of a job, with a picture that is none.</summary>
    public static SamplePage Of(CompiledJob job, int threads = 1)
    {
        EmissionSettings settings = Samples.Settings with { Parallelism = new Parallelism(threads) };
        JobData data = new([], new Fingerprint(0x123456789ABCDEF), new Fingerprint(0xFEDCBA987654321));
        return new SamplePage(ReportEmitter.Emit(job, data, ReportFields.Of(job, SampleJob.Surface(job), settings.Parallelism), settings, [new EmittedFile(PictureSet.Unit, new byte[] { 1, 2, 3, 4 }), new EmittedFile(DoubtPicture.Path, new byte[] { 5, 6, 7, 8 })]));
    }

    /// <summary>The part with an id.</summary>
    public XElement Part(string id) => Root.Descendants().Single(element => (string?)element.Attribute("id") == id);

    /// <summary>Text of a part, white space drawn together.</summary>
    public string TextOf(string id) => Spaces().Replace(Part(id).Value, " ");

    [GeneratedRegex("<(?<tag>script|style)(?<rest>[^>]*)>.*?</(script|style)>", RegexOptions.Singleline | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Opaque();

    [GeneratedRegex("\\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Spaces();
}

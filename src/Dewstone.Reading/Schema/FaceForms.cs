using Dewstone.Model.Description;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>The faces of the outer box as words.</summary>
internal static class FaceForms
{
    /// <summary>A list of faces.</summary>
    public static readonly FormOf<FaceSet> Faces = new MappedForm<IReadOnlyList<FaceSet>, FaceSet>(
        new ListForm<FaceSet>(
            new WordForm<FaceSet>(
                ("sides", FaceSet.Sides), ("top", FaceSet.Top), ("bottom", FaceSet.Bottom),
                ("east", FaceSet.East), ("west", FaceSet.West), ("north", FaceSet.North), ("south", FaceSet.South)),
            1, "faces", "[sides, top]"),
        faces => faces.Aggregate(FaceSet.None, (all, face) => all | face));
}

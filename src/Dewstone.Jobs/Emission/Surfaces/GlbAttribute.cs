namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>Something that a binary glTF tells of every corner.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Form">glTF's word for how many numbers it has.</param>
/// <param name="Number">glTF's code of a number's type.</param>
/// <param name="Bytes">Bytes a corner.</param>
internal sealed record GlbAttribute(string Name, string Form, int Number, int Bytes);

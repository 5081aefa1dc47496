namespace Dewstone.Model.Description;

/// <summary>Cross-section of a tunnel.</summary>
public abstract record Section;

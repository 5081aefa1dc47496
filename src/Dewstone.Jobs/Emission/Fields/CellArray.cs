namespace Dewstone.Jobs.Emission.Fields;

/// <summary>One array of a field file: a value a cell, made block by block when it is written.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Type">Its type in the file: UInt8, UInt16 or Float32.</param>
/// <param name="CellBytes">Bytes a cell.</param>
/// <param name="Fill">Makes the values.</param>
internal sealed record CellArray(string Name, string Type, int CellBytes, CellFiller Fill);

/** Hands a file to the person's device, as a download. Nothing leaves the device but by this. */
export function saveFile(name: string, type: string, content: BlobPart): void {
	const address = URL.createObjectURL(new Blob([content], { type }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// The browser has taken hold of the file by the next turn; later the address would only hold memory.
	setTimeout(() => {
		URL.revokeObjectURL(address);
	}, 60_000);
}

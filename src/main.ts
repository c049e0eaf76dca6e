/** Where the page starts; the bench mounts here. */
document.title = 'Toeline';

/** Runs in the browser: of which version the records kept are. */
export async function keptVersion(surveyId: string): Promise<string | undefined> {
  const book = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('slateline');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const kept = await new Promise<{ dataVersion: string } | undefined>((done, failed) => {
    const asking = book.transaction('records').objectStore('records').get(surveyId);
    asking.onsuccess = () => done(asking.result);
    asking.onerror = () => failed(asking.error);
  });
  book.close();
  return kept?.dataVersion;
}

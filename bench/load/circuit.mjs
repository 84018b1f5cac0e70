// A page of the app without a browser: speaks the protocol of a Blazor circuit over a WebSocket, draws nothing, but keeps where
// each field's handler is, so that it can type as a person does. The protocol is ASP.NET Core's own (blazorpack).
import { decode, encode } from '@msgpack/msgpack';
import WebSocket from 'ws';
import { noteHandlers } from './renderbatch.mjs';

const INVOCATION = 1, COMPLETION = 3, PING = 6, CLOSE = 7;
const OBJECT_REFERENCE = 1; // kind of result: a module that .NET keeps hold of
const KEEP_ALIVE = 10_000; // ms

/** One window. */
export class Circuit {
  #socket; #dispatcher; #renderer = 1; #calls = 0; #objects = 0; #pending = new Map(); #buffer = Buffer.alloc(0); #opened; #beat;
  fields = new Map(); // by id: where what is typed into it goes
  batches = 0;
  bytes = 0;
  faults = [];

  /** Opens a page; done when it has drawn itself. */
  static async open(address, path) {
    const circuit = new Circuit();
    const page = await (await fetch(address + path)).text();
    const markers = [...page.matchAll(/<!--Blazor:(\{.*?\})-->/gs)].map(m => JSON.parse(m[1])).filter(m => m.type === 'server');
    const state = page.match(/<!--Blazor-Server-Component-State:([^-]+)-->/)?.[1] ?? '';
    await circuit.#connect(address);
    const id = await circuit.#invoke('StartCircuit', address + '/', address + path, '[]', state);
    if (!id) throw new Error('no circuit was begun');
    const drawn = new Promise(done => (circuit.#opened = done));
    const operations = markers.map((marker, i) => ({ type: 'add', ssrComponentId: i + 1, marker }));
    circuit.#send('UpdateRootComponents', JSON.stringify({ batchId: 1, operations }), state);
    await drawn;
    return circuit;
  }

  /** Types a whole text into a field; done when the app has dealt with it. */
  async type(field, text) {
    if (!this.fields.has(field)) throw new Error(`there is no field ${field}`);
    const descriptor = { eventHandlerId: this.fields.get(field).handler, eventName: 'input', eventFieldInfo: null };
    await this.#invokeDotNet('DispatchEventAsync', [descriptor, { value: text }]);
  }

  close() {
    clearInterval(this.#beat);
    this.#socket.removeAllListeners('close');
    this.#socket.close();
  }

  async #connect(address) {
    const socket = new WebSocket(address.replace('http', 'ws') + '/_blazor', { origin: address });
    this.#socket = socket;
    await new Promise((done, failed) => socket.once('open', done).once('error', failed));
    const shaken = new Promise(done => socket.once('message', done));
    socket.send('{"protocol":"blazorpack","version":1}\x1e');
    const answer = String(await shaken);
    if (!answer.startsWith('{}')) throw new Error(`the handshake was answered ${answer}`);
    socket.on('message', data => this.#receive(data));
    socket.on('close', code => this.#fail(`the socket was closed (${code})`));
    socket.on('error', e => this.#fail(e.message));
    this.#beat = setInterval(() => this.#write([PING]), KEEP_ALIVE);
  }

  #receive(data) {
    this.bytes += data.length;
    this.#buffer = this.#buffer.length ? Buffer.concat([this.#buffer, data]) : data;
    for (;;) {
      let size = 0, at = 0;
      for (let shift = 0; ; shift += 7) {
        if (at >= this.#buffer.length) return;
        const byte = this.#buffer[at++];
        size |= (byte & 0x7f) << shift;
        if (!(byte & 0x80)) break;
      }
      if (this.#buffer.length < at + size) return;
      const message = decode(this.#buffer.subarray(at, at + size));
      this.#buffer = this.#buffer.subarray(at + size);
      this.#take(message);
    }
  }

  #take(message) {
    if (message[0] === COMPLETION) {
      const [, , id, kind, result] = message, call = this.#pending.get(id);
      this.#pending.delete(id);
      if (kind === 1) call?.failed(new Error(result));
      else call?.done(result);
    } else if (message[0] === CLOSE) {
      this.#fail(`the app closed the circuit: ${message[1]}`);
    } else if (message[0] === INVOCATION) {
      const [, , , target, args] = message;
      if (target === 'JS.RenderBatch') this.#draw(...args);
      else if (target === 'JS.BeginInvokeJS') this.#answer(...args);
      else if (target === 'JS.EndInvokeDotNet') this.#ended(...args);
      else if (target === 'JS.EndUpdateRootComponents') this.#opened?.();
      else if (target === 'JS.Error') this.#fail(args[0]);
    }
  }

  #draw(id, batch) {
    this.batches++;
    noteHandlers(batch, this.fields);
    this.#send('OnRenderCompleted', id, null);
  }

  // What the page's own scripts would answer: a module for each import, and nothing else.
  #answer(task, identifier, argsJson, resultKind) {
    if (identifier === 'Blazor._internal.attachWebRendererInterop') {
      const args = JSON.parse(argsJson);
      this.#dispatcher = args[1].__dotNetObject;
    }
    if (!task) return;
    const result = resultKind === OBJECT_REFERENCE ? { __jsObjectId: ++this.#objects } : null;
    this.#send('EndInvokeJSFromDotNet', task, true, JSON.stringify([task, true, result]));
  }

  #ended(id, succeeded, result) {
    const call = this.#pending.get('net' + id);
    this.#pending.delete('net' + id);
    if (succeeded) call?.done(result);
    else call?.failed(new Error(String(result)));
  }

  #invokeDotNet(method, args) {
    const id = String(++this.#calls);
    this.#send('BeginInvokeDotNetFromJS', id, null, method, this.#dispatcher, JSON.stringify(args));
    return new Promise((done, failed) => this.#pending.set('net' + id, { done, failed }));
  }

  #invoke(target, ...args) {
    const id = String(++this.#calls);
    this.#write([INVOCATION, {}, id, target, args, []]);
    return new Promise((done, failed) => this.#pending.set(id, { done, failed }));
  }

  #send(target, ...args) {
    this.#write([INVOCATION, {}, null, target, args, []]);
  }

  #write(message) {
    if (this.#socket.readyState !== WebSocket.OPEN) return;
    const body = Buffer.from(encode(message));
    const size = [];
    for (let rest = body.length; ; rest >>>= 7) {
      size.push(rest > 0x7f ? (rest & 0x7f) | 0x80 : rest);
      if (rest <= 0x7f) break;
    }
    this.#socket.send(Buffer.concat([Buffer.from(size), body]));
  }

  #fail(sentence) {
    clearInterval(this.#beat);
    this.faults.push(sentence);
    for (const call of this.#pending.values()) call.failed(new Error(sentence));
    this.#pending.clear();
  }
}

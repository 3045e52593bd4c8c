export default { connectToDevTools() {} }
